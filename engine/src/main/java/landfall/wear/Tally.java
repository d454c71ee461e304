// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import landfall.history.Happening;
import landfall.quantity.Length;

/**
 * Holes cut, by material, under the empty text where none was told. Depths are summed in whole nanometres, so that the
 * sums are the same in whatever steps they were made.
 *
 * @param byMaterial the one told first at the head
 */
public record Tally(Map<String, Share> byMaterial) {
    private static final double NM_PER_MM = 1e6;

    public static final Tally NONE = new Tally(Map.of());

    /**
     * Holes in one material.
     *
     * @param told of them, those whose depth was told
     * @param depthNm sum of those depths in nanometres
     */
    public record Share(long holes, long told, long depthNm) {
        static final Share NONE = new Share(0, 0, 0);

        Share plus(Happening.Tapped cut) {
            long more = cut.holes().count();
            Length depth = cut.work().depth();
            return depth == null
                    ? new Share(holes + more, told, depthNm)
                    : new Share(
                            holes + more,
                            told + more,
                            Math.addExact(depthNm, Math.multiplyExact(more, Math.round(depth.mm() * NM_PER_MM))));
        }

        /** Sum of the depths that were told. */
        public Length depth() {
            return Length.ofMm(depthNm / NM_PER_MM);
        }
    }

    public Tally {
        byMaterial = Collections.unmodifiableMap(new LinkedHashMap<>(byMaterial));
    }

    public Tally plus(Happening.Tapped cut) {
        String told = cut.work().material();
        String material = told == null ? "" : told;
        Map<String, Share> more = new LinkedHashMap<>(byMaterial);
        more.put(material, more.getOrDefault(material, Share.NONE).plus(cut));
        return new Tally(more);
    }

    public boolean isEmpty() {
        return byMaterial.isEmpty();
    }

    /** As counted or guessed. */
    public long holes() {
        return byMaterial.values().stream().mapToLong(Share::holes).sum();
    }

    /** The material of most of the holes of which it was told; empty where nobody told any. */
    public String material() {
        String most = "";
        long holes = 0;
        for (Map.Entry<String, Share> one : byMaterial.entrySet()) {
            if (!one.getKey().isEmpty() && one.getValue().holes() > holes) {
                most = one.getKey();
                holes = one.getValue().holes();
            }
        }
        return most;
    }
}
