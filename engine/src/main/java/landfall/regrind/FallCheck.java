// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import landfall.fault.Caution;
import landfall.grind.ChamferShape;
import landfall.grind.GrindWish;
import landfall.quantity.Length;
import landfall.quantity.Measured;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * The fall of each land against what the wanted relief asks for: {@code f_n = r tan(α_n) θ_L}, square to the chamfer.
 *
 * <p>The tolerance is that of the relief itself: common practice knows it to two degrees and no better, so a land is
 * right from two degrees less to two degrees more, and never without working relief.
 */
final class FallCheck {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/regrind.md");
    private static final Source PRACTICE = Source.of("common-practice", "how well the relief of a chamfer is known");
    static final Rule EITHER_WAY =
            Rule.table("t_α", "deg", PRACTICE, Trust.PRACTICE, "relief that common practice does not tell apart");
    static final Rule LEAST = new Rule(
            "f_lo",
            "r*tan(max(α_n - t_α, η))*θ_L*pi/180",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "least fall at the heel, square to the chamfer");
    static final Rule MOST = new Rule(
            "f_hi",
            "r*tan(α_n + t_α)*θ_L*pi/180",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "greatest fall at the heel, square to the chamfer");
    private static final double EITHER_DEG = 2;
    private static final String WITH =
            "fall from edge to heel on each land, dial square to the chamfer, cam at rest, land measured";

    private FallCheck() {}

    static Check of(Tap tap, GrindWish wish, Reground found, List<Caution> cautions, Pen pen) {
        ChamferShape shape = ChamferShape.of(tap, wish, cautions, pen);
        double ground = shape.relief().ground().deg();
        double loss = shape.relief().loss().deg();
        double t = pen.write(EITHER_WAY, EITHER_DEG);
        double reach = shape.midRadius().mm() * shape.land().rad();
        double least = pen.write(LEAST, reach * Math.tan(Math.toRadians(Math.max(ground - t, loss))));
        double most = pen.write(MOST, reach * Math.tan(Math.toRadians(ground + t)));
        String rule = String.format(
                Locale.ROOT,
                "%s for %.1f deg at work; from %s to %s: two degrees either way (common practice)",
                shape.fall().square().words(),
                shape.relief().working().deg(),
                Length.ofMm(least).words(),
                Length.ofMm(most).words());
        if (found.falls().isEmpty()) {
            return new Check("fall", WITH, rule, "", null);
        }
        Length low = found.falls().stream().min(Comparator.naturalOrder()).orElseThrow();
        Length high = found.falls().stream().max(Comparator.naturalOrder()).orElseThrow();
        Verdict verdict = both(judge(low, least, most, found), judge(high, least, most, found));
        return new Check("fall", WITH, rule, "%s to %s".formatted(low.words(), high.words()), verdict);
    }

    private static Verdict judge(Length fall, double least, double most, Reground found) {
        return Verdict.within(new Measured(fall, found.lengthUncertainty()), least, most);
    }

    private static Verdict both(Verdict one, Verdict other) {
        if (one == Verdict.BAD || other == Verdict.BAD) {
            return Verdict.BAD;
        }
        return one == Verdict.GOOD ? other : one;
    }
}
