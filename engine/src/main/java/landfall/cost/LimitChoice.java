// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.wear.Learned;
import landfall.wear.WearLaw;
import landfall.working.Pen;
import landfall.working.Worked;

/**
 * The wear limit at which a hole costs least: docs/methods/cost-per-hole.md.
 *
 * @param best of the curve
 * @param alike limits at which a hole costs at most 5 % more
 * @param perHole at the best limit, from the kind end of the wear law to the unkind one; eight in ten at most
 * @param curve every limit that was looked at, 0.01 mm apart, to 1.5 times the usual one
 */
public record LimitChoice(LimitPoint best, Limits alike, Band perHole, List<LimitPoint> curve, List<Caution> cautions) {
    private static final double STEP_MM = 0.01;
    private static final double FARTHEST = 1.5;
    private static final double ALIKE = 1.05;

    public LimitChoice {
        curve = List.copyOf(curve);
        cautions = List.copyOf(cautions);
    }

    public static LimitChoice of(WearLaw law, Bench bench, SharpeningsAt sharpenings) {
        Learned learned = law.learned().value();
        Length due = law.prior().subject().due();
        LimitPoint.Basis basis = new LimitPoint.Basis(
                learned.middle().expected(), learned.breaks().expected(), due);
        List<LimitPoint> curve = curve(basis, bench, sharpenings);
        LimitPoint best = curve.stream()
                .min(Comparator.comparingDouble(point -> point.perHole().amount()))
                .orElseThrow(() -> new OutOfRange(
                        "wear limit", due.words(), "0.02 mm or more", "give the wear land at which taps are due"));
        Band perHole = new Band(
                cost(
                        best,
                        new LimitPoint.Basis(
                                learned.middle().high(), learned.breaks().low(), due),
                        bench),
                best.perHole().amount(),
                cost(
                        best,
                        new LimitPoint.Basis(
                                learned.middle().low(), learned.breaks().high(), due),
                        bench));
        List<Caution> cautions = new ArrayList<>(law.cautions());
        cautions.addAll(cautions(best, curve));
        return new LimitChoice(best, alike(best, curve), perHole, curve, cautions);
    }

    private static List<LimitPoint> curve(LimitPoint.Basis basis, Bench bench, SharpeningsAt sharpenings) {
        List<LimitPoint> curve = new ArrayList<>();
        int steps = (int) Math.floor(FARTHEST * basis.due().mm() / STEP_MM + 1e-9);
        for (int i = 2; i <= steps; i++) {
            Length limit = Length.ofMm(i * STEP_MM);
            curve.add(LimitPoint.at(limit, sharpenings.count(limit), basis, bench, Pen.NONE));
        }
        return curve;
    }

    private static double cost(LimitPoint at, LimitPoint.Basis basis, Bench bench) {
        return LimitPoint.at(at.limit(), at.sharpenings(), basis, bench, Pen.NONE)
                .perHole()
                .amount();
    }

    private static Limits alike(LimitPoint best, List<LimitPoint> curve) {
        Length low = best.limit();
        Length high = best.limit();
        for (LimitPoint point : curve) {
            if (point.perHole().amount() <= ALIKE * best.perHole().amount()) {
                low = point.limit().compareTo(low) < 0 ? point.limit() : low;
                high = point.limit().compareTo(high) > 0 ? point.limit() : high;
            }
        }
        return new Limits(low, high);
    }

    private static List<Caution> cautions(LimitPoint best, List<LimitPoint> curve) {
        List<Caution> cautions = new ArrayList<>();
        if (best.equals(curve.get(curve.size() - 1))) {
            cautions.add(new Caution(
                    "limitAtEnd",
                    "A hole still gets cheaper at one and a half times the usual wear limit, where taps count as"
                            + " spent. Beyond it nothing is known of torque and thread; do not go there for cost.",
                    "w_x"));
        } else if (best.equals(curve.get(0))) {
            cautions.add(new Caution(
                    "limitAtStart",
                    "A hole is cheapest at the least wear that a loupe can tell: the part is so dear that a new tap"
                            + " for each job may be right.",
                    "w_x"));
        }
        if (best.spoilt().amount() > best.perHole().amount() / 2) {
            cautions.add(new Caution(
                    "partDecides",
                    "More than half of the cost is what broken taps spoil: the part decides here, and not the tap.",
                    "C_b"));
        }
        return cautions;
    }

    /** The working of one point of the curve. */
    public static Worked<LimitPoint> working(WearLaw law, Bench bench, LimitPoint point) {
        Learned learned = law.learned().value();
        LimitPoint.Basis basis = new LimitPoint.Basis(
                learned.middle().expected(),
                learned.breaks().expected(),
                law.prior().subject().due());
        return Worked.of(pen -> LimitPoint.at(point.limit(), point.sharpenings(), basis, bench, pen));
    }
}
