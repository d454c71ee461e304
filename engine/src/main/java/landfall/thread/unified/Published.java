// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import landfall.thread.Table;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;
import landfall.thread.scan.Numerals;

/**
 * Allowances and pitch diameter tolerances that the published tables print otherwise than the formula gives. Gauges are
 * made to the tables, so the table wins. Units of 1e-8 in.
 */
record Published(Map<String, Long> figures) {
    static final Published NONE = new Published(Map.of());
    static final String ALLOWANCE = "es";

    private static final long ABSENT = -1;
    private static final Map<UnifiedSize, Published> BY_SIZE = new HashMap<>();

    static {
        for (List<String> row : Table.rows("unified-published")) {
            InchHead head = InchHead.read(new Cursor(row.get(0) + "-" + row.get(1)));
            Published size = BY_SIZE.computeIfAbsent(UnifiedSize.of(head, 1), any -> new Published(new HashMap<>()));
            size.figures.put(row.get(2), Numerals.decimal(new Cursor(row.get(3))));
        }
    }

    static Published of(UnifiedSize size) {
        return BY_SIZE.getOrDefault(size, NONE);
    }

    static Map<UnifiedSize, Published> all() {
        return Map.copyOf(BY_SIZE);
    }

    /** The printed figure, or the formula's where none parts from it. */
    long or(String figure, long byFormula) {
        return figures.getOrDefault(figure, byFormula);
    }

    boolean has(String figure) {
        return figures.getOrDefault(figure, ABSENT) != ABSENT;
    }
}
