// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.grind.GrindWish;
import landfall.quantity.Length;
import landfall.quantity.Measured;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * Whether a reground tap is right, by instruments that a shop has.
 *
 * <p>Chamfer equality is judged twice. The length rule of the trade (alike within a fifth of a pitch) is loose: on a
 * chamfer of 9 degrees that is more than half a chip. The share rule (largest chip at most 1.3 times the mean) is what
 * the tap feels. They can disagree, and then the answer says so.
 *
 * @param checks in the order of work, with verdicts where something was measured
 * @param worstShare largest chip over the mean chip, from the chamfer lengths; null without them
 * @param oversize most that the hole can come out over the tap: the total run-out; null if it was not measured
 */
public record Inspection(
        List<Check> checks,
        @Nullable Double worstShare,
        @Nullable Length oversize,
        List<Caution> cautions) {
    public Inspection {
        checks = List.copyOf(checks);
        cautions = List.copyOf(cautions);
    }

    /** What to measure on this tap after it was ground back, and what the measured figures say. */
    public static Worked<Inspection> of(Tap tap, Length groundBack, Reground found) {
        return of(tap, groundBack, found, null);
    }

    /** The same with the diameter of the point, if it was measured. */
    public static Worked<Inspection> of(Tap tap, Length groundBack, Reground found, @Nullable Measured point) {
        return of(tap, found, new Asked(groundBack, point, GrindWish.USUAL, Looked.NOTHING));
    }

    /** The same against the relief that was wanted, with what was looked at and tried. */
    public static Worked<Inspection> of(Tap tap, Reground found, Asked asked) {
        require("chamferLengths", found.chamferLengths(), tap.flutes().count());
        require("falls", found.falls(), tap.flutes().count());
        return Worked.of(pen -> compute(tap, found, asked, pen));
    }

    /**
     * What is inspected, besides what was measured on every land.
     *
     * @param groundBack length by which the chamfer was ground back
     * @param point diameter at the point, if it was measured
     * @param wish relief that was wanted
     * @param looked what was looked at and tried
     */
    public record Asked(Length groundBack, @Nullable Measured point, GrindWish wish, Looked looked) {}

    private static Inspection compute(Tap tap, Reground found, Asked asked, Pen pen) {
        Length groundBack = asked.groundBack();
        List<Caution> cautions = new ArrayList<>();
        List<Check> checks = new ArrayList<>();
        ChamferEquality equality = ChamferEquality.of(tap, found, pen);
        checks.addAll(equality.checks());
        checks.add(FallCheck.of(tap, asked.wish(), found, cautions, pen));
        checks.add(InspectionChecks.falls(found.falls(), found.lengthUncertainty()));
        checks.add(InspectionChecks.runOut(tap, found.totalRunOut(), pen));
        checks.add(PointCheck.of(tap, groundBack, asked.point(), pen));
        checks.add(InspectionChecks.pitchDiameter(tap, groundBack, found.pitchDiameter(), pen));
        checks.addAll(asked.looked().checks(tap));
        equality.disagreement().ifPresent(cautions::add);
        if (found.totalRunOut() != null) {
            cautions.add(new Caution(
                    "oversizeIsABound",
                    "How much over its own size the tap cuts lies between nothing (held stiffly)"
                            + " and the total run-out (led by its chamfer, floating freely): a bound, not a"
                            + " forecast.",
                    "run-out"));
        }
        return new Inspection(checks, equality.worst(), found.totalRunOut(), cautions);
    }

    private static void require(String field, List<Length> lengths, int flutes) {
        if (!lengths.isEmpty() && lengths.size() != flutes) {
            throw new OutOfRange(
                    field,
                    lengths.size() + " lands",
                    flutes + ", one for each land, or none",
                    "measure every land, counted backwards from land 1");
        }
    }
}
