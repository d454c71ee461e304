// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.grind.Cam;
import landfall.grind.CamCurve;
import landfall.grind.Fixture;
import landfall.grind.GrindSetup;
import landfall.grind.Lobe;
import landfall.grind.Screws;
import landfall.grind.Wheel;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.Tap;
import org.jspecify.annotations.Nullable;

/**
 * The relieving fixture as typed. Left out: the cam's curve is straight and its rise starts with the edge on the centre
 * line (0 deg).
 */
public final class FixtureCard {
    public static final Form FORM = FixtureFields.FORM;

    private static final String UNNAMED = "fixture";

    private FixtureCard() {}

    /** The fields of a card file. */
    public static Answer<Map<String, String>> read(String json) {
        return Flat.read(json, FORM);
    }

    /** The card as JSON, from the same fields. */
    public static String write(Map<String, String> typed) {
        return CardJson.write(FORM, typed);
    }

    /** The fixture, judged; every part that cannot be is found at once. */
    public static Answer<Fixture> fixture(Entries entries) {
        Judging judging = new Judging();
        Lobe lobe = judging.part(() -> new Lobe(
                entries.get(FixtureFields.RISE_START).orElse(Angle.ZERO),
                entries.need(FixtureFields.RISE_ANGLE),
                entries.need(FixtureFields.RETURN_ANGLE)));
        CamCurve curve = curve(entries, judging);
        Limits axial = reach(entries, FixtureFields.AXIAL_FROM, FixtureFields.AXIAL_TO, judging);
        Limits radial = reach(entries, FixtureFields.RADIAL_FROM, FixtureFields.RADIAL_TO, judging);
        if (radial == null && lobe != null && curve instanceof CamCurve.Circle circle) {
            radial = byOffset(entries, circle, lobe.riseAngle());
        }
        Limits risen = radial;
        Cam cam = judging.isClean()
                ? judging.part(() -> new Cam(
                        entries.need(FixtureFields.LOBES),
                        Objects.requireNonNull(curve),
                        Objects.requireNonNull(lobe),
                        axial,
                        risen))
                : null;
        Wheel wheel = judging.part(() -> wheel(entries));
        return judging.whole(() -> new Fixture(
                entries.get(FixtureFields.NAME).orElse(UNNAMED),
                Objects.requireNonNull(cam),
                Objects.requireNonNull(wheel),
                entries.get(FixtureFields.RESOLUTION).orElse(null),
                entries.get(FixtureFields.SWIVEL_STEP).orElse(null),
                new Screws(
                        entries.get(FixtureFields.AXIAL_SCREW).orElse(null),
                        entries.get(FixtureFields.RADIAL_SCREW).orElse(null))));
    }

    /** What does not fit between a tap and the cam, told even where another part of the fixture is refused. */
    public static List<Finding> misfits(Tap tap, Entries entries) {
        try {
            Lobe lobe = new Lobe(
                    entries.get(FixtureFields.RISE_START).orElse(Angle.ZERO),
                    entries.need(FixtureFields.RISE_ANGLE),
                    entries.need(FixtureFields.RETURN_ANGLE));
            return GrindSetup.misfits(tap, entries.need(FixtureFields.LOBES), lobe);
        } catch (OutOfRange alreadyFound) {
            return List.of();
        }
    }

    private static @Nullable CamCurve curve(Entries entries, Judging judging) {
        String curve = entries.get(FixtureFields.CURVE).orElse("straight");
        belongs(entries, FixtureFields.TABLE, curve.equals("points"), "points", judging);
        belongs(entries, FixtureFields.PHASE, curve.equals("circle"), "circle", judging);
        if (entries.has(FixtureFields.OFFSET) && !curve.equals("circle")) {
            belongs(entries, FixtureFields.OFFSET, false, "circle", judging);
        }
        if (!judging.isClean()) {
            return null;
        }
        return switch (curve) {
            case "circle" -> judging.part(() -> new CamCurve.Circle(entries.need(FixtureFields.PHASE)));
            case "points" -> judging.part(() -> new CamCurve.Points(entries.need(FixtureFields.TABLE)));
            default -> new CamCurve.Straight();
        };
    }

    /** A figure of one curve only: needed there, out of place elsewhere. */
    private static void belongs(Entries entries, Field<?> field, boolean here, String curve, Judging judging) {
        if (here && !entries.has(field)) {
            judging.found(
                    field.path(),
                    "",
                    "is needed for the curve " + curve,
                    "give " + field.kind().words());
        } else if (!here && entries.has(field)) {
            judging.found(
                    field.path(),
                    entries.typed(field),
                    "belongs to the curve " + curve,
                    "give cam.curve " + curve + ", or leave it out");
        }
    }

    private static @Nullable Limits reach(Entries entries, Field<Length> from, Field<Length> to, Judging judging) {
        if (!entries.has(from) && !entries.has(to)) {
            return null;
        }
        for (Field<Length> end : List.of(from, to)) {
            if (!entries.has(end)) {
                judging.found(
                        end.path(),
                        "",
                        "is needed beside the other end",
                        "give " + end.kind().words());
                return null;
            }
        }
        if (entries.need(from).compareTo(entries.need(to)) > 0) {
            judging.found(from.path(), entries.typed(from), "is over " + to.path(), "swap the two");
            return null;
        }
        return new Limits(entries.need(from), entries.need(to));
    }

    /** What a circle set off by e rises over the whole rise angle: e·(cos ψ − cos(B + ψ)), to first order. */
    private static @Nullable Limits byOffset(Entries entries, CamCurve.Circle circle, Angle riseAngle) {
        return entries.get(FixtureFields.OFFSET)
                .map(offset -> new Limits(
                        Length.ZERO,
                        offset.times(Math.cos(circle.phase().rad())
                                - Math.cos(riseAngle.plus(circle.phase()).rad()))))
                .orElse(null);
    }

    private static Wheel wheel(Entries entries) {
        Length diameter = entries.need(FixtureFields.WHEEL);
        return new Wheel(
                diameter,
                entries.get(FixtureFields.MARKING).orElse(null),
                entries.get(FixtureFields.MARKED_SPEED)
                        .map(mark -> mark.at(diameter))
                        .orElse(null),
                entries.get(FixtureFields.SPINDLE).orElse(null));
    }
}
