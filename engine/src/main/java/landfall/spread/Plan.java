// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

import java.util.List;

/**
 * What a run is to do.
 *
 * @param seed of its draws
 * @param samples how many set-ups
 * @param rows how many of them, from the first on, serve for the sensitivities as well; whole blocks
 * @param laws of what varies
 * @param limits of each result that is watched
 */
public record Plan(long seed, long samples, long rows, List<Law> laws, List<Within> limits) {
    /** Set-ups that are taken together. A result is merged by blocks in their order, so this is part of the answer. */
    public static final int BLOCK = 512;

    public Plan {
        laws = List.copyOf(laws);
        limits = List.copyOf(limits);
        if (samples < 1 || rows < 0 || rows > samples) {
            throw new IllegalArgumentException("samples " + samples + ", rows " + rows);
        }
    }

    /** How many blocks there are; the last may be short. */
    public long blocks() {
        return (samples + BLOCK - 1) / BLOCK;
    }

    int size(long block) {
        return (int) Math.min(BLOCK, samples - block * BLOCK);
    }

    boolean isForSensitivities(long block) {
        return block * BLOCK < rows && laws.size() > 1;
    }
}
