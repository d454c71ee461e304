// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

/**
 * Uniform draws: each is a function of seed, input and number alone, whoever asks for it and when.
 *
 * @param seed of the whole run
 */
public record Draws(long seed) {
    /** 2^-53: the upper 53 bits of a word of 64 make a double. */
    private static final double STEP = 0x1.0p-53;

    /** A draw between 0 and 1, both left out, for set-up {@code number} of an input. */
    public double uniform(int input, long number) {
        return open(Philox.half(number, input, seed, true));
    }

    /** A second draw, independent of the first, for the sensitivities. */
    double second(int input, long number) {
        return open(Philox.half(number, input, seed, false));
    }

    private static double open(long bits) {
        return ((bits >>> 11) + 0.5) * STEP;
    }
}
