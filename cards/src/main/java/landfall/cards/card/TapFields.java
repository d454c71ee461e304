// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import static landfall.cards.form.Field.needed;
import static landfall.cards.form.Field.optional;

import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.material.WorkMaterial;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.Centres;
import landfall.tap.FluteKind;
import landfall.tap.LimitMark;
import landfall.tap.TapMaterial;
import landfall.tap.ThreadRelief;
import landfall.thread.CallOut;

/**
 * The fields of a tap card, in the order that they are written. Ranges here are of a toolroom; the engine judges the
 * tap.
 */
public final class TapFields {
    static final Field<Integer> VERSION = optional("landfall", Kinds.count(1, 1), "1");
    static final Field<String> MARK = optional("mark", Kinds.TEXT, "T-0112");
    public static final Field<CallOut> THREAD = needed("thread", CardKinds.CALL_OUT, "M8x1.25-6H");
    static final Field<Integer> COUNT = needed("flutes.count", Kinds.count(1, 16), "3");
    public static final Field<FluteKind> KIND =
            optional("flutes.kind", CardKinds.codes(FluteKind.values(), FluteKind::code), "straight");
    static final Field<Length> CORE = optional("flutes.core", Quantities.length(0.05, 300), "3.5 mm");
    static final Field<Length> RADIUS = optional("flutes.radius", Quantities.length(0.05, 300), "2.1 mm");
    static final Field<Angle> RAKE = optional("flutes.rake", Quantities.angle(-20, 45), "10 deg");
    static final Field<Angle> HELIX = optional("flutes.helix", Quantities.angle(0, 60), "0 deg");
    static final Field<Length> LAND_WIDTH = optional("land.width", Quantities.length(0.01, 300), "2.6 mm");
    static final Field<Length> LAND_CHORD = optional("land.chord", Quantities.length(0.01, 300), "2.55 mm");
    static final Field<Angle> LAND_ANGLE = optional("land.angle", Quantities.angle(1, 359), "37 deg");
    static final Field<Angle> CHAMFER_ANGLE = optional("chamfer.angle", Quantities.angle(1, 45), "9 deg");
    static final Field<Length> POINT = optional("chamfer.pointDiameter", Quantities.length(0.05, 300), "6.4 mm");
    static final Field<Double> THREADS = optional("chamfer.threads", Quantities.threads(0.2, 40), "4");
    static final Field<Length> THREAD_LENGTH = optional("threadLength", Quantities.length(0.5, 1000), "22 mm");
    static final Field<Length> OVERALL = optional("overallLength", Quantities.length(5, 2000), "72 mm");
    static final Field<Length> SHANK = optional("shank.diameter", Quantities.diameter(0.5, 300), "8 mm");
    static final Field<Length> NECK = optional("shank.neck", Quantities.diameter(0.3, 300), "6.1 mm");
    public static final Field<Length> SQUARE = optional("shank.square", Quantities.length(0.3, 200), "6.2 mm");
    static final Field<Centres> CENTRES =
            optional("centres", CardKinds.codes(Centres.values(), Centres::code), "holes");
    static final Field<Double> BACK_TAPER = optional("backTaper", Quantities.number(0, 0.01), "0.001");
    static final Field<ThreadRelief.Kind> RELIEF = optional(
            "threadRelief.kind", CardKinds.codes(ThreadRelief.Kind.values(), ThreadRelief.Kind::code), "concentric");
    static final Field<Angle> RELIEF_SLOPE = optional("threadRelief.slope", Quantities.angle(0, 10), "0 deg");
    static final Field<Angle> RELIEF_MARGIN = optional("threadRelief.margin", Quantities.angle(0, 180), "0 deg");
    static final Field<LimitMark> LIMIT = optional("limit", CardKinds.LIMIT_MARK, "class 2");
    static final Field<Length> PITCH_MIN = optional("limit.pitchMin", Quantities.length(0.05, 300), "7.226 mm");
    static final Field<Length> PITCH_MAX = optional("limit.pitchMax", Quantities.length(0.05, 300), "7.250 mm");
    static final Field<Length> LEAST_LENGTH = optional("least.threadLength", Quantities.length(0.5, 1000), "11 mm");
    static final Field<Angle> LEAST_LAND = optional("least.landAngle", Quantities.angle(1, 359), "30 deg");
    static final Field<Length> LEAST_PITCH = optional("least.pitchDiameter", Quantities.length(0.05, 300), "7.210 mm");
    static final Field<TapMaterial> MATERIAL =
            optional("material", CardKinds.codes(TapMaterial.values(), TapMaterial::code), "HSS");
    static final Field<String> COATING = optional("coating", Kinds.TEXT, "TiN");
    static final Field<Boolean> INTERRUPTED = optional("interrupted", Kinds.YES_NO, "no");
    public static final Field<WorkMaterial> CUTS = optional("cuts", CardKinds.WORK_MATERIAL, "4140 annealed");

    /** The card. */
    public static final Form FORM = Form.of(
            "tap-card",
            VERSION,
            MARK,
            THREAD,
            COUNT,
            KIND,
            CORE,
            RADIUS,
            RAKE,
            HELIX,
            LAND_WIDTH,
            LAND_CHORD,
            LAND_ANGLE,
            CHAMFER_ANGLE,
            POINT,
            THREADS,
            THREAD_LENGTH,
            OVERALL,
            SHANK,
            NECK,
            SQUARE,
            CENTRES,
            BACK_TAPER,
            RELIEF,
            RELIEF_SLOPE,
            RELIEF_MARGIN,
            LIMIT,
            PITCH_MIN,
            PITCH_MAX,
            LEAST_LENGTH,
            LEAST_LAND,
            LEAST_PITCH,
            MATERIAL,
            COATING,
            INTERRUPTED,
            CUTS);

    private TapFields() {}
}
