// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

import java.util.Arrays;

/** The pitches and diameter ranges that ISO 965 tabulates. Lengths in whole units of 1e-4 mm. */
final class PitchIndex {
    static final int UNITS_PER_MM = 10_000;

    private static final int[] PITCHES = {
        2000, 2500, 3000, 3500, 4000, 4500, 5000, 6000, 7000, 7500, 8000, 10000, 12500, 15000, 17500, 20000, 25000,
        30000, 35000, 40000, 45000, 50000, 55000, 60000, 80000
    };
    /** Upper ends of the diameter ranges; the lowest begins over 0.99 mm. */
    private static final int[] UPPER = {14000, 28000, 56000, 112000, 224000, 450000, 900000, 1800000, 3550000};

    private static final int LOWEST = 9900;

    private PitchIndex() {}

    static int pitches() {
        return PITCHES.length;
    }

    static int ranges() {
        return UPPER.length;
    }

    /** Place of a tabulated pitch, or -1. */
    static int ofPitch(int pitch) {
        int found = Arrays.binarySearch(PITCHES, pitch);
        return found >= 0 ? found : -1;
    }

    /** Place of the range that holds a diameter, or -1. */
    static int ofDiameter(int diameter) {
        if (diameter <= LOWEST) {
            return -1;
        }
        for (int i = 0; i < UPPER.length; i++) {
            if (diameter <= UPPER[i]) {
                return i;
            }
        }
        return -1;
    }

    /** The geometric mean of a range's ends, which the tolerance formulas use in place of the diameter, in mm. */
    static double meanOfRange(int range) {
        double low = range == 0 ? LOWEST : UPPER[range - 1];
        return Math.sqrt(low * UPPER[range]) / UNITS_PER_MM;
    }
}
