// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import landfall.cost.HoleCost;
import landfall.cut.Tempo;
import landfall.hole.DepthStack;
import landfall.hole.HoleChoice;
import landfall.quantity.Band;
import org.jspecify.annotations.Nullable;

/** One line of the drawing, with what it is made with and how long that takes. */
public record Planned(HoleLine line, HoleChoice hole, TapPick tap, GaugePick gauge, Work work) {
    /**
     * Times of all its holes together.
     *
     * @param tempo of the tap
     * @param taps what taps cost; null where no price was told
     */
    public record Work(Tempo tempo, Times times, @Nullable Taps taps) {}

    /** Minutes in each operation, set-up not counted. */
    public record Times(Timed drilling, Timed sinking, Timed tapping, Timed gauging) {}

    /** @param all for all holes of the line */
    public record Taps(HoleCost perHole, Band all, BandRule rule) {}

    /** Every line of a job has a depth. */
    public DepthStack depth() {
        DepthStack depth = hole.depth();
        if (depth == null) {
            throw new IllegalStateException("a line without a depth: " + line.line());
        }
        return depth;
    }
}
