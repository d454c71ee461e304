// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dial;

import landfall.grind.Place;

/** The letter that marks each place of a dial, the same in the drawings and in the table of readings. */
public final class Letters {
    private Letters() {}

    /** A for the first place, B for the second, and on. */
    public static String of(Place place) {
        return String.valueOf((char) ('A' + place.ordinal()));
    }
}
