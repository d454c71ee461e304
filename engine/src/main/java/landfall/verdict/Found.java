// SPDX-License-Identifier: Apache-2.0
package landfall.verdict;

import java.util.List;
import landfall.fault.Caution;
import landfall.quantity.Limits;
import landfall.tap.mark.TapZone;
import org.jspecify.annotations.Nullable;

/**
 * The verdict on what lies on the bench.
 *
 * @param part tap, hole or screw
 * @param verdict on the whole; null when nothing was found that could be judged
 * @param judged one by one
 * @param tap what only a tap has; null for others
 * @param depth of full thread that the GO plug's turns show; null when it was not turned in
 */
public record Found(
        String part,
        @Nullable Verdict verdict,
        List<Judged> judged,
        @Nullable OfTap tap,
        @Nullable Depth depth,
        List<Caution> cautions) {
    public Found {
        judged = List.copyOf(judged);
        cautions = List.copyOf(cautions);
    }

    /** Whether a tap is under its own limits. */
    public enum Worn {
        NO("no"),
        PERHAPS("perhaps"),
        YES("yes"),
        /** The first taps of a hand set. */
        BY_DESIGN("no: undersize by design");

        private final String words;

        Worn(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * Of a tap alone.
     *
     * @param zone its own limits; null when it has no mark
     * @param inLimits of what was measured against its own limits; null when nothing could be
     * @param worn null when there is nothing to tell it by
     * @param hole that it will cut; null when its pitch diameter was not measured or the family has no limits
     */
    public record OfTap(
            @Nullable TapZone zone,
            @Nullable Verdict inLimits,
            @Nullable Worn worn,
            @Nullable CutHole hole) {}

    /** Full thread by the turns of the GO plug: the first thread counts in part. */
    public record Depth(Limits full) {}
}
