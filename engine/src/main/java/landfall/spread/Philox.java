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

    /** Words 0 and 1 of the answer, word 0 lowest. */
    static long low(int c0, int c1, int c2, int c3, long key) {
        return half(c0, c1, c2, c3, key, true);
    }

    /** Words 2 and 3 of the answer, word 2 lowest. */
    static long high(int c0, int c1, int c2, int c3, long key) {
        return half(c0, c1, c2, c3, key, false);
    }

    private static long half(int c0, int c1, int c2, int c3, long key, boolean low) {
        int k0 = (int) key;
        int k1 = (int) (key >>> 32);
        int x0 = c0;
        int x1 = c1;
        int x2 = c2;
        int x3 = c3;
        for (int round = 0; round < ROUNDS; round++) {
            long p0 = M0 * (x0 & WORD);
            long p1 = M1 * (x2 & WORD);
            int y0 = (int) (p1 >>> 32) ^ x1 ^ k0;
            int y2 = (int) (p0 >>> 32) ^ x3 ^ k1;
            x1 = (int) p1;
            x3 = (int) p0;
            x0 = y0;
            x2 = y2;
            k0 += W0;
            k1 += W1;
        }
        return low ? (x0 & WORD) | (long) x1 << 32 : (x2 & WORD) | (long) x3 << 32;
    }
}
