// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import static landfall.cards.form.Field.needed;
import static landfall.cards.form.Field.optional;

import java.util.List;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.grind.CamCurve;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Turning;

/** The fields of a fixture card, in the order that they are written. */
public final class FixtureFields {
    static final Field<String> NAME = optional("name", Kinds.TEXT, "shop relieving fixture");
    static final Field<Integer> LOBES = needed("cam.lobes", Kinds.count(1, 16), "3");
    static final Field<String> CURVE = optional(
            "cam.curve", CardKinds.codes(new String[] {"straight", "circle", "points"}, code -> code), "straight");
    static final Field<Angle> RISE_START = optional("cam.riseStart", Quantities.angle(-90, 90), "0 deg");
    static final Field<Angle> RISE_ANGLE = needed("cam.riseAngle", Quantities.angle(1, 359), "60 deg");
    static final Field<Angle> RETURN_ANGLE = needed("cam.returnAngle", Quantities.angle(0, 359), "30 deg");
    static final Field<Length> OFFSET = optional("cam.offset", Quantities.length(0.001, 100), "1.2 mm");
    static final Field<Angle> PHASE = optional("cam.phase", Quantities.angle(0, 180), "90 deg");
    static final Field<List<CamCurve.Point>> TABLE =
            optional("cam.table", CardKinds.CAM_TABLE, "0 deg 0, 30 deg 0.5, 60 deg 1");
    static final Field<Length> AXIAL_FROM = optional("cam.axial.from", Quantities.length(0, 100), "0 mm");
    static final Field<Length> AXIAL_TO = optional("cam.axial.to", Quantities.length(0, 100), "3 mm");
    static final Field<Length> RADIAL_FROM = optional("cam.radial.from", Quantities.length(0, 100), "0 mm");
    static final Field<Length> RADIAL_TO = optional("cam.radial.to", Quantities.length(0, 100), "0.8 mm");
    static final Field<Length> AXIAL_SCREW = optional("cam.axial.perTurn", Quantities.length(0.0001, 50), "0.5 mm");
    static final Field<Length> RADIAL_SCREW = optional("cam.radial.perTurn", Quantities.length(0.0001, 50), "0.25 mm");
    static final Field<Length> WHEEL = needed("wheel.diameter", Quantities.length(1, 1000), "150 mm");
    static final Field<String> MARKING = optional("wheel.marking", Kinds.TEXT, "A80J6V");
    static final Field<WheelMark> MARKED_SPEED = optional("wheel.markedSpeed", CardKinds.WHEEL_MARK, "4000 rev/min");
    static final Field<Turning> SPINDLE = optional("wheel.spindle", Quantities.TURNING, "3200 rev/min");
    public static final Field<Length> RESOLUTION = optional("dial.resolution", Quantities.length(0.0001, 1), "0.01 mm");
    static final Field<Angle> SWIVEL_STEP = optional("swivel.step", Quantities.angle(0.001, 15), "0.25 deg");

    /** The card. */
    public static final Form FORM = Form.of(
            "fixture-card",
            TapFields.VERSION,
            NAME,
            LOBES,
            CURVE,
            RISE_START,
            RISE_ANGLE,
            RETURN_ANGLE,
            OFFSET,
            PHASE,
            TABLE,
            AXIAL_FROM,
            AXIAL_TO,
            AXIAL_SCREW,
            RADIAL_FROM,
            RADIAL_TO,
            RADIAL_SCREW,
            WHEEL,
            MARKING,
            MARKED_SPEED,
            SPINDLE,
            RESOLUTION,
            SWIVEL_STEP);

    private FixtureFields() {}
}
