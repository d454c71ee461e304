// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import landfall.cards.card.ShopCard;
import landfall.fault.Finding;

/**
 * A job as it was typed.
 *
 * @param fields of the job itself
 * @param rows of its holes
 * @param amiss what was wrong with the text that it was read from
 */
public record JobGiven(Map<String, String> fields, List<HoleRow> rows, List<Amiss> amiss) {
    private static final Set<String> OF_SHOP = Set.of("drills", "gauges");

    public JobGiven {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
        rows = List.copyOf(rows);
        amiss = List.copyOf(amiss);
    }

    public JobGiven(Map<String, String> fields, List<HoleRow> rows) {
        this(fields, rows, List.of());
    }

    static JobGiven unreadable(List<Finding> findings) {
        return new JobGiven(
                Map.of(),
                List.of(),
                findings.stream().map(finding -> new Amiss(0, finding)).toList());
    }

    /** The same with these fields over its own. */
    public JobGiven with(Map<String, String> more) {
        Map<String, String> all = new LinkedHashMap<>(fields);
        all.putAll(more);
        return new JobGiven(all, rows, amiss);
    }

    /** The same with what a shop's card says of drills and gauges, where the job itself does not. */
    public JobGiven in(Map<String, String> shop) {
        Map<String, String> all = new LinkedHashMap<>(fields);
        shop.forEach((path, text) -> {
            if (OF_SHOP.contains(path) && ShopCard.FORM.field(path).isPresent()) {
                all.putIfAbsent(path, text);
            }
        });
        return new JobGiven(all, rows, amiss);
    }

    /** Those that hold something, numbered as they stand. */
    public static List<HoleRow> filled(List<Map<String, String>> rows) {
        List<HoleRow> filled = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).values().stream().anyMatch(cell -> !cell.isBlank())) {
                filled.add(new HoleRow(i + 1, rows.get(i)));
            }
        }
        return filled;
    }
}
