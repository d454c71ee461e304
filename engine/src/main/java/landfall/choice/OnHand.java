// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import landfall.history.Standing;
import landfall.quantity.Limits;
import landfall.tap.Body;
import landfall.tap.FluteKind;
import landfall.thread.CallOut;
import landfall.wear.Brief;
import landfall.wear.WearLaw;
import org.jspecify.annotations.Nullable;

/**
 * A tap on record, as far as its card tells it.
 *
 * @param wearing by what it wears in the material that is asked about; null for a tap that has ended
 */
public record OnHand(
        String mark,
        CallOut callOut,
        Build build,
        Standing standing,
        @Nullable Wearing wearing) {
    /**
     * What the card says; null is what it does not.
     *
     * @param flutes right-handed: a spiral of the thread's own hand is a right-hand one
     * @param chamferThreads length of the chamfer in pitches
     * @param pitch the tap's own limits of pitch diameter, as marked or measured
     * @param set that it belongs to; empty for none
     */
    public record Build(
            FluteKind flutes,
            @Nullable Double chamferThreads,
            @Nullable Limits pitch,
            Body body,
            String set) {}

    /**
     * Its wear.
     *
     * @param law of its thread and kind in the material that is to be cut
     * @param run that goes on since it was sharp
     */
    public record Wearing(WearLaw law, Brief run) {}
}
