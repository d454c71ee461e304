// SPDX-License-Identifier: Apache-2.0
package landfall.verdict;

import landfall.quantity.Limits;
import landfall.quantity.Measured;
import org.jspecify.annotations.Nullable;

/**
 * One thing that was measured or gauged, and how it stands.
 *
 * @param what in words, such as {@code pitch diameter}
 * @param measured null where a gauge gave the answer
 * @param limits open where only a gauge was used
 */
public record Judged(String what, @Nullable Measured measured, Limits limits, Verdict verdict, String why) {
    static final Limits OPEN = new Limits(null, null);

    static Judged of(String what, Measured found, Limits limits) {
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
