// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.fault.OutOfRange;
import landfall.grind.CamProfile;
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
    /** A heel that is read by eye may be off by this. */
    private static final double PAST_HEEL_DEG = 1;

    public DialAsk {
        if (readings.flutes() != tap.flutes()) {
            throw new OutOfRange(
                    "flutes of the readings",
                    "" + readings.flutes(),
                    tap.flutes() + ", as the tap has",
                    "check that the readings belong to this tap");
        }
        for (Reading reading : readings.list()) {
            if (reading.angle().deg() > tap.land().deg() + PAST_HEEL_DEG) {
                throw new OutOfRange(
                        "angle of a reading on land " + reading.land(),
                        Numbers.plain(reading.angle().deg()) + " deg",
                        "on the land: from the edge to the heel at "
                                + Numbers.plain(tap.land().deg()) + " deg",
                        "count each land's angle from its own edge; in the flute a stylus reads nothing");
            }
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
