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
     * Half of the answer to a counter; in each long the lower word comes first.
     *
     * @param lower words 0 and 1 of the counter
     * @param upper words 2 and 3
     * @param first whether words 0 and 1 of the answer are wanted, or 2 and 3
     */
    static long half(long lower, long upper, long key, boolean first) {
        int k0 = (int) key;
        int k1 = (int) (key >>> 32);
        int x0 = (int) lower;
        int x1 = (int) (lower >>> 32);
        int x2 = (int) upper;
        int x3 = (int) (upper >>> 32);
        for (int round = 0; round < ROUNDS; round++) {
            long p0 = M0 * (x0 & WORD);
            long p1 = M1 * (x2 & WORD);
            x0 = (int) (p1 >>> 32) ^ x1 ^ k0;
            x2 = (int) (p0 >>> 32) ^ x3 ^ k1;
            x1 = (int) p1;
            x3 = (int) p0;
            k0 += W0;
            k1 += W1;
        }
        return first ? (x0 & WORD) | (long) x1 << 32 : (x2 & WORD) | (long) x3 << 32;
    }
}
