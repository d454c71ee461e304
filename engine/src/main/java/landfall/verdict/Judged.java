// SPDX-License-Identifier: Apache-2.0
package landfall.verdict;

import java.util.Optional;
import landfall.quantity.Limits;
import landfall.quantity.Measured;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * One thing that was measured or gauged, and how it stands.
 *
 * @param what in words, such as {@code pitch diameter}
 * @param measured null where a gauge gave the answer
 * @param limits open where only a gauge was used
 */
public record Judged(String what, @Nullable Measured measured, Limits limits, Verdict verdict, String why) {
    private static final Source ABOVE = Source.of("derived", "found above, or as measured");
    static final Rule MEASURED = Rule.table("x_j", "mm", ABOVE, Trust.MEASURED, "what is judged, as measured");
    static final Rule UNCERTAINTY = Rule.table("U_j", "mm", ABOVE, Trust.MEASURED, "its uncertainty, 95 %");
    static final Rule LEAST = Rule.table("j.min", "mm", ABOVE, Trust.DERIVED, "least that it is judged by");
    static final Rule GREATEST = Rule.table("j.max", "mm", ABOVE, Trust.DERIVED, "greatest that it is judged by");
    static final Limits OPEN = new Limits(null, null);

    static Judged of(String what, Measured found, Limits limits, Pen pen) {
        pen.write(MEASURED, found.value().mm());
        pen.write(UNCERTAINTY, found.uncertainty().mm());
        Optional.ofNullable(limits.min()).ifPresent(min -> pen.write(LEAST, min.mm()));
        Optional.ofNullable(limits.max()).ifPresent(max -> pen.write(GREATEST, max.mm()));
        Verdict verdict = Verdict.of(found, limits);
        return new Judged(what, found, limits, verdict, why(verdict, found, limits));
    }

    private static String why(Verdict verdict, Measured found, Limits limits) {
        return switch (verdict) {
            case GO -> "inside, uncertainty and all";
            case NOT_GO ->
                limits.min() != null && found.value().mm() < limits.min().mm()
                        ? "under its least"
                        : "over its greatest";
            case BORDERLINE ->
                "nearer to a limit than its uncertainty of "
                        + found.uncertainty().words();
        };
    }
}
