// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Limits;
import landfall.thread.CallOut;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * A drill that a published list names for this thread, held against the thread's own minor limits, whatever the
 * engagement.
 *
 * @param share of thread by the drill's diameter, as a fraction
 * @param inside whether the drill's own diameter lies in the limits: lists do not say what hole they expect
 */
public record ListedDrill(PublishedDrill drill, double share, boolean inside, Rules rules) {
    /** The formulas of one row. */
    public record Rules(Rule diameter, Rule share) {
        static Rules of(String mark) {
            return new Rules(
                    Rule.table(
                            "δ" + mark,
                            "mm",
                            Source.of("derived", "published lists"),
                            Trust.HANDBOOK,
                            "drill of the list"),
                    ShareBasis.shareOf("q" + mark, "δ" + mark));
        }
    }

    /** The major diameter and the full depth have been written. */
    static List<ListedDrill> of(CallOut callOut, Pen pen) {
        ScrewThread thread = callOut.thread();
        Limits minor =
                callOut.limits(Side.INTERNAL, Pen.NONE).map(SideLimits::minor).orElseThrow();
        List<ListedDrill> rows = new ArrayList<>();
        double full = ShareBasis.FULL_DEPTH.twice(thread, Pen.NONE).mm();
        for (PublishedDrill published : PublishedDrill.of(thread)) {
            Rules rules = Rules.of("_l" + (rows.size() + 1));
            double drill = pen.write(rules.diameter, published.size().drill().mm());
            double share = pen.write(rules.share, 100 * (thread.major().mm() - drill) / full);
            rows.add(new ListedDrill(
                    published, share / 100, minor.holds(published.size().drill()), rules));
        }
        return List.copyOf(rows);
    }
}
