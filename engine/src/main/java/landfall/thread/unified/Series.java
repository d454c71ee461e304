// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.thread.Table;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;

/** The standard series of diameter and pitch. */
public enum Series {
    UNC("C", "coarse"),
    UNF("F", "fine"),
    UNEF("EF", "extra fine"),
    /** Constant pitch: 4, 6, 8, 12, 16, 20, 28, 32 threads an inch. */
    UN("", "constant pitch"),
    /** Any other pair, or a standard pair with a special length of engagement or more starts. */
    UNS("S", "special");

    private static final Map<Pair, Series> STANDARD = new HashMap<>();
    private static final List<UnifiedSize> SIZES = new ArrayList<>();

    private final String suffix;
    private final String words;

    Series(String suffix, String words) {
        this.suffix = suffix;
        this.words = words;
    }

    private record Pair(long major, long pitch) {}

    static {
        for (List<String> row : Table.rows("unified-series")) {
            UnifiedSize size = sizeOf(row.get(0), row.get(1));
            STANDARD.put(new Pair(size.major(), size.pitch()), valueOf(row.get(2)));
            SIZES.add(size);
        }
    }

    private static UnifiedSize sizeOf(String size, String threadsPerInch) {
        InchHead head = InchHead.read(new Cursor(size + "-" + threadsPerInch));
        return UnifiedSize.of(head, 1);
    }

    /** The letters after UN, UNR or UNJ. */
    public String suffix() {
        return suffix;
    }

    public String words() {
        return words;
    }

    /** The series that a single-start pair belongs to; empty for special pairs. */
    public static Optional<Series> of(UnifiedSize size) {
        return Optional.ofNullable(STANDARD.get(new Pair(size.major(), size.pitch())));
    }

    /** Every standard size, coarse first. */
    public static List<UnifiedSize> sizes() {
        return List.copyOf(SIZES);
    }
}
