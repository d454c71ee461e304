// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

/**
 * The counter-based generator Philox 4×32 of ten rounds, Salmon and others 2011 ({@code salmon-2011}): four words out
 * of a counter of four words and a key of two, without a state. The paper's known answers are a test.
 */
final class Philox {
    private static final long M0 = 0xD2511F53L;
    private static final long M1 = 0xCD9E8D57L;
    private static final int W0 = 0x9E3779B9;
    private static final int W1 = 0xBB67AE85;
    private static final int ROUNDS = 10;
    private static final long WORD = 0xFFFFFFFFL;

    private Philox() {}

    /**
     * Turns a counter into its answer, in place; word 0 is the lowest.
     *
     * @param x four words
     */
    static void scramble(int[] x, long key) {
        int k0 = (int) key;
        int k1 = (int) (key >>> 32);
        for (int round = 0; round < ROUNDS; round++) {
            long p0 = M0 * (x[0] & WORD);
            long p1 = M1 * (x[2] & WORD);
            x[0] = (int) (p1 >>> 32) ^ x[1] ^ k0;
            x[2] = (int) (p0 >>> 32) ^ x[3] ^ k1;
            x[1] = (int) p1;
            x[3] = (int) p0;
            k0 += W0;
            k1 += W1;
        }
    }

    /** Two words of an answer as one, the first of them the lower half. */
    static long pair(int[] x, int first) {
        return (x[first] & WORD) | (long) x[first + 1] << 32;
    }
}
