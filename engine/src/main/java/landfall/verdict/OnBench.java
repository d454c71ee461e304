// SPDX-License-Identifier: Apache-2.0
package landfall.verdict;

import landfall.quantity.Length;
import landfall.quantity.Measured;
import landfall.tap.mark.TapMark;
import org.jspecify.annotations.Nullable;

/** What lies on the bench, and what was found on it beside its pitch diameter; null where it was not looked for. */
public sealed interface OnBench {
    /** Only sizes are asked for. */
    record Nothing() implements OnBench {}

    /**
     * A tap.
     *
     * @param mark null when it has none: then only what it will cut is judged
     * @param crest diameter over the crests
     * @param runOut total, of the chamfer against the thread
     * @param rings round the shank; 1 and 2 are the first taps of a hand set, undersize by design
     */
    record ATap(
            @Nullable TapMark mark,
            @Nullable Measured crest,
            @Nullable Length runOut,
            @Nullable Integer rings) implements OnBench {}

    /**
     * A tapped hole.
     *
     * @param minor by a plain pin or otherwise
     * @param plugs what the thread gauges did
     */
    record AHole(@Nullable Measured minor, Plugs plugs) implements OnBench {}

    /**
     * What plug gauges did; turns from where the first thread catches.
     *
     * @param goes whether GO ran the whole length
     * @param goTurns turns that GO ran before it stopped
     * @param notGoTurns turns that NOT GO went in; 0 when it does not start
     * @param depth full thread that is wanted, from the face
     */
    record Plugs(
            @Nullable Boolean goes,
            @Nullable Double goTurns,
            @Nullable Double notGoTurns,
            @Nullable Length depth) {
        public static final Plugs NONE = new Plugs(null, null, null, null);
    }

    /** A screw; the major diameter by a plain micrometer. */
    record AScrew(@Nullable Measured major) implements OnBench {}
}
