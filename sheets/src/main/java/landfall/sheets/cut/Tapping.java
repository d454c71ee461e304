// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.cut;

import landfall.cut.CutForecast;
import landfall.hole.HoleChoice;
import landfall.tap.Tap;
import org.jspecify.annotations.Nullable;

/**
 * One tap in one hole, with all that is known of both.
 *
 * @param hole the hole's depths and drill; null for threads that have none
 */
public record Tapping(Tap tap, CutForecast cut, @Nullable HoleChoice hole) {
    /** Whether the hole is of the size of the drill that was chosen for it. */
    public boolean isOfDrill() {
        return hole != null
                && Math.abs(hole.tools()
                                .drill()
                                .drill()
                                .diameter()
                                .minus(cut.wish().hole())
                                .mm())
                        < 1e-6;
    }
}
