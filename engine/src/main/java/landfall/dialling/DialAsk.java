// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.fault.OutOfRange;
import landfall.grind.Place;

/**
 * The question: these readings, on this tap, with this cam.
 *
 * @param readings of one place
 * @param cam form of the rise, or of the relief on the tap
 * @param tap that was dialled
 * @param beside what was read or asked beside them
 */
public record DialAsk(Readings readings, CamProfile cam, TapFacts tap, Beside beside) {
    public DialAsk {
        if (readings.flutes() != tap.flutes()) {
            throw new OutOfRange(
                    "flutes of the readings",
                    "" + readings.flutes(),
                    tap.flutes() + ", as the tap has",
                    "check that the readings belong to this tap");
        }
        Readings reference = beside.reference();
        if (reference != null && reference.place() != Place.CREST && reference.place() != Place.SHANK) {
            throw new OutOfRange(
                    "place of the reference readings",
                    reference.place().toString(),
                    "CREST or SHANK",
                    "dial the crests of the full thread behind the chamfer with a flat anvil, or the shank");
        }
    }
}
