// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * How well the readings behind a pitch diameter are known: expanded, 95 %.
 *
 * @param reading of the size over the wires, of the V-anvil's scale, or of a pitch diameter that was measured otherwise
 * @param wire of the wires' diameter, the same error in all of them
 * @param crest of the diameter over the crests
 * @param flank of half the included angle
 * @param assumed nothing was told: all four are what a shop may take
 */
public record ReadingUncertainty(Length reading, Length wire, Length crest, Angle flank, boolean assumed) {
    /**
     * A good micrometer, wires of a set, a crest measured in the same way, a ground thread whose half angle may be out
     * by 30 minutes (the tolerance of ground-thread taps of 10 threads an inch and finer).
     */
    public static final ReadingUncertainty USUAL =
            new ReadingUncertainty(Length.ofMm(0.004), Length.ofMm(0.0005), Length.ofMm(0.005), Angle.ofDeg(0.5), true);
}
