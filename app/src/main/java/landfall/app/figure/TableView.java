// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import landfall.cards.answer.Item;
import landfall.cards.words.Words;
import landfall.quantity.UnitSystem;

/**
 * A table of an answer. The unit stands in the head of a column of figures.
 *
 * @param path where it stands in the answer
 */
public record TableView(String path, String label, List<Column> columns, List<List<String>> rows) {
    /** A column's head, and whether words stand under it. */
    public record Column(String head, boolean words) {}

    static TableView of(String noun, String path, Item.Rows rows, UnitSystem units) {
        Set<String> keys = new LinkedHashSet<>();
        rows.rows().forEach(row -> row.items().forEach(item -> keys.add(item.key())));
        List<Column> columns = new ArrayList<>();
        for (String key : keys) {
            String head = Words.of(noun + "." + path + "." + key);
            columns.add(column(head, key, rows.rows(), units));
        }
        List<List<String>> cells = rows.rows().stream()
                .map(row -> keys.stream().map(key -> cell(row, key, units)).toList())
                .toList();
        return new TableView(path, Words.of(noun + "." + path), columns, cells);
    }

    private static Column column(String head, String key, List<Item.Group> rows, UnitSystem units) {
        for (Item.Group row : rows) {
            for (Item item : row.items()) {
                if (item.key().equals(key) && item instanceof Item.Figure figure) {
                    String sign = figure.unit().sign(units);
                    return new Column(sign.equals("1") ? head : head + ", " + Digits.sign(figure.unit(), units), false);
                }
                if (item.key().equals(key) && item instanceof Item.Count) {
                    return new Column(head, false);
                }
            }
        }
        return new Column(head, true);
    }

    private static String cell(Item.Group row, String key, UnitSystem units) {
        return row.items().stream()
                .filter(item -> item.key().equals(key))
                .findFirst()
                .map(item -> text(item, units))
                .orElse("");
    }

    private static String text(Item item, UnitSystem units) {
        if (item instanceof Item.Figure figure) {
            return Digits.shown(figure.value(), figure.unit(), units);
        }
        if (item instanceof Item.Text text) {
            return text.text();
        }
        if (item instanceof Item.Count count) {
            return String.valueOf(count.count());
        }
        if (item instanceof Item.Flag flag) {
            return Words.of(flag.yes() ? "text.yes" : "text.no");
        }
        throw new IllegalStateException("not a cell of a table: " + item);
    }
}
