// SPDX-License-Identifier: Apache-2.0
package landfall.verdict;

import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Measured;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * The hole that a tap will cut: its pitch diameter as a band, and what plug gauges of the class will say of it.
 *
 * @param pitch mm
 * @param go whether the GO plug will enter
 * @param notGo whether the NOT GO plug will be kept out
 */
public record CutHole(Band pitch, Limits limits, Verdict go, Verdict notGo) {
    private static final Source BOUND = Source.of("derived", "docs/methods/verdicts.md, the hole that a tap cuts");
    static final Rule RUN_OUT = Rule.given("r", "mm", "total run-out of the chamfer, measured");
    static final Rule RUN_OUT_ALLOWED = Rule.table(
            "r",
            "mm",
            Source.of("is-6171", "total run-out of the chamfer, as a tap maker's page quotes it"),
            Trust.HANDBOOK,
            "total run-out that a new tap may have, as none was measured");
    static final Rule TAP = Rule.table(
            "E_t",
            "mm",
            Source.of("derived", "the tap's pitch diameter as measured"),
            Trust.MEASURED,
            "pitch diameter of the tap");
    static final Rule TAP_UNCERTAINTY = Rule.table(
            "U_t",
            "mm",
            Source.of("derived", "its uncertainty, 95 %"),
            Trust.MEASURED,
            "uncertainty of the tap's pitch diameter");
    public static final Rule LOW = rule("E_h.lo", "E_t - U_t", "hole held stiffly by a true tap: pitch diameter");
    public static final Rule EXPECTED = rule("E_h", "E_t + r/2", "pitch diameter of the hole to expect");
    public static final Rule HIGH =
            rule("E_h.hi", "E_t + U_t + r", "tap led by its chamfer, floating: pitch diameter of the hole");

    private static Rule rule(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "mm", BOUND, Trust.ESTIMATE, means);
    }

    static CutHole of(Measured tap, Length major, @Nullable Length runOut, Limits product, Pen pen) {
        double r = runOut == null ? pen.write(RUN_OUT_ALLOWED, allowedRunOut(major)) : pen.write(RUN_OUT, runOut.mm());
        double E_t = pen.write(TAP, tap.value().mm());
        double U_t = pen.write(TAP_UNCERTAINTY, tap.uncertainty().mm());
        double low = pen.write(LOW, E_t - U_t);
        double high = pen.write(HIGH, E_t + U_t + r);
        Measured middle = new Measured(Length.ofMm((low + high) / 2), Length.ofMm((high - low) / 2));
        return new CutHole(
                new Band(low, pen.write(EXPECTED, E_t + r / 2), high),
                product,
                Verdict.atLeast(middle, product.min()),
                Verdict.atMost(middle, product.max()));
    }

    /** What IS 6171 allows a new tap, second hand. */
    private static double allowedRunOut(Length major) {
        double d = major.mm();
        if (d <= 18) {
            return 0.030;
        }
        return d <= 30 ? 0.035 : 0.040;
    }

    public Verdict verdict() {
        return go.and(notGo);
    }
}
