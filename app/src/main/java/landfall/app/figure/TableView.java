// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cards.words.Words;
import landfall.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * A table of an answer. The unit stands in the head of a column of figures.
 *
 * @param path where it stands in the answer
 */
public record TableView(String path, String label, List<Column> columns, List<List<String>> rows) {
    /** A column's head, and whether words stand under it. */
    public record Column(String head, boolean words) {}

    static TableView of(String noun, String path, Item.Rows rows, UnitSystem units) {
        List<Map<String, Item>> flat = rows.rows().stream().map(TableView::flat).toList();
        Set<String> keys = new LinkedHashSet<>();
        flat.forEach(row -> keys.addAll(row.keySet()));
        List<Column> columns = new ArrayList<>();
        for (String key : keys) {
            columns.add(column(Words.of(noun + "." + path + "." + key), key, flat, units));
        }
        List<List<String>> cells = flat.stream()
                .map(row -> keys.stream().map(key -> cell(row.get(key), units)).toList())
                .toList();
        return new TableView(path, Words.of(noun + "." + path), columns, cells);
    }

    /** A row by key; what stands in a group of it goes by the group's key and its own. */
    private static Map<String, Item> flat(Item.Group row) {
        Map<String, Item> items = new LinkedHashMap<>();
        for (Item item : row.items()) {
            if (item instanceof Item.Group group) {
                flat(group).forEach((key, inner) -> items.put(group.key() + "." + key, inner));
            } else {
                items.put(item.key(), item);
            }
        }
        return items;
    }

    private static Column column(String head, String key, List<Map<String, Item>> rows, UnitSystem units) {
        for (Map<String, Item> row : rows) {
            Optional<Unit> unit = unit(row.get(key));
            if (unit.isPresent()) {
                String sign = Digits.sign(unit.get(), units);
                return new Column(sign.isEmpty() ? head : head + ", " + sign, false);
            }
            if (row.get(key) instanceof Item.Count) {
                return new Column(head, false);
            }
        }
        return new Column(head, true);
    }

    private static Optional<Unit> unit(@Nullable Item item) {
        if (item instanceof Item.Figure figure) {
            return Optional.of(figure.unit());
        }
        if (item instanceof Item.BandFigure band) {
            return Optional.of(band.unit());
        }
        if (item instanceof Item.FittedFigure fitted) {
            return Optional.of(fitted.unit());
        }
        return item instanceof Item.Range range ? Optional.of(range.unit()) : Optional.empty();
    }

    private static String cell(@Nullable Item item, UnitSystem units) {
        if (item == null) {
            return "";
        }
        if (item instanceof Item.Figure figure) {
            return Digits.shown(figure.value(), figure.unit(), units);
        }
        if (item instanceof Item.BandFigure band) {
            return shown(band.expected(), band.unit(), units) + " ("
                    + Words.of(
                            "page.figure.band",
                            shown(band.low(), band.unit(), units),
                            shown(band.high(), band.unit(), units))
                    + ")";
        }
        if (item instanceof Item.FittedFigure fitted) {
            return shown(fitted.value(), fitted.unit(), units) + " "
                    + Words.of("page.figure.within", shown(fitted.uncertainty(), fitted.unit(), units));
        }
        if (item instanceof Item.Range range) {
            return Words.of(
                    "page.figure.band",
                    shown(range.min(), range.unit(), units),
                    shown(range.max(), range.unit(), units));
        }
        return words(item);
    }

    private static String shown(Item.@Nullable Point point, Unit unit, UnitSystem units) {
        return point == null ? "–" : Digits.shown(point.value(), unit, units);
    }

    private static String words(Item item) {
        if (item instanceof Item.Text text) {
            return text.shown();
        }
        if (item instanceof Item.Count count) {
            return String.valueOf(count.count());
        }
        if (item instanceof Item.Flag flag) {
            return Words.of(flag.yes() ? "text.yes" : "text.no");
        }
        if (item instanceof Item.Lines lines) {
            return String.join("; ", lines.lines());
        }
        throw new IllegalStateException("not a cell of a table: " + item);
    }
}
