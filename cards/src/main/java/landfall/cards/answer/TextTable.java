// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.cards.words.Words;
import landfall.quantity.UnitSystem;

/** A table of an answer in plain text: one line a row where it fits, one block a row where it does not. */
final class TextTable {
    private static final String GAP = "  ";

    private final String path;
    private final UnitSystem units;

    TextTable(String path, UnitSystem units) {
        this.path = path;
        this.units = units;
    }

    List<String> lines(Item.Rows table, int indent) {
        if (table.rows().isEmpty()) {
            return List.of();
        }
        if (table.cross() != null) {
            return laidOut(crossed(table, table.cross()), indent);
        }
        Map<String, Item> shape = new LinkedHashMap<>();
        table.rows().forEach(row -> row.items().forEach(item -> shape.putIfAbsent(item.key(), item)));
        List<List<String>> columns = new ArrayList<>();
        shape.values().forEach(first -> columns.add(column(table, first)));
        return laidOut(columns, indent);
    }

    private static List<String> laidOut(List<List<String>> columns, int indent) {
        int width = indent + GAP.length() * (columns.size() - 1);
        for (List<String> column : columns) {
            width += widest(column);
        }
        return width <= Lay.WIDTH ? side(columns, indent) : blocks(columns, indent);
    }

    private List<List<String>> crossed(Item.Rows table, Item.Cross cross) {
        Map<String, List<String>> columns = new LinkedHashMap<>();
        List<String> down = new ArrayList<>();
        Item first = entry(table.rows().get(0), cross.down()).orElseThrow();
        columns.put(cross.down(), down);
        down.add(Words.of(path + "." + cross.down()));
        down.add(sign(first));
        for (Item.Group row : table.rows()) {
            String line = entry(row, cross.down()).map(this::cell).orElse("");
            String head = entry(row, cross.across()).map(this::cell).orElse("");
            if (!down.get(down.size() - 1).equals(line) || down.size() == 2) {
                down.add(line);
            }
            Item cell = entry(row, cross.cell()).orElseThrow();
            columns.computeIfAbsent(head, missing -> new ArrayList<>(List.of(head, sign(cell))))
                    .add(cell(cell));
        }
        return List.copyOf(columns.values());
    }

    private static Optional<Item> entry(Item.Group row, String key) {
        return row.items().stream().filter(item -> item.key().equals(key)).findFirst();
    }

    /** Head, unit, cells; a row without this entry has an empty cell; where units differ each cell has its own. */
    private List<String> column(Item.Rows table, Item first) {
        List<String> column = new ArrayList<>();
        column.add(Words.of(path + "." + first.key()));
        boolean mixed = table.rows().stream()
                .flatMap(row -> entry(row, first.key()).stream())
                .anyMatch(item -> !sign(item).equals(sign(first)));
        column.add(mixed ? "" : sign(first));
        for (Item.Group row : table.rows()) {
            column.add(entry(row, first.key())
                    .map(item -> mixed ? (cell(item) + " " + sign(item)).strip() : cell(item))
                    .orElse(""));
        }
        return column;
    }

    private String sign(Item item) {
        if (item instanceof Item.Figure figure) {
            return shown(figure.unit());
        }
        if (item instanceof Item.BandFigure band) {
            return shown(band.unit());
        }
        if (item instanceof Item.FittedFigure fitted) {
            return shown(fitted.unit());
        }
        return item instanceof Item.Range range ? shown(range.unit()) : "";
    }

    private String shown(Unit unit) {
        return unit == Unit.PURE ? "" : unit.sign(units);
    }

    private String range(Item.Range range) {
        String min = range.min() == null ? "" : figure(range.min().value(), range.unit());
        String max = range.max() == null ? "" : figure(range.max().value(), range.unit());
        if (min.isEmpty()) {
            return "to " + max;
        }
        return max.isEmpty() ? "from " + min : min + " to " + max;
    }

    String cell(Item item) {
        if (item instanceof Item.Figure figure) {
            return figure(figure.value(), figure.unit());
        } else if (item instanceof Item.BandFigure band) {
            return figure(band.low().value(), band.unit()) + " to "
                    + figure(band.high().value(), band.unit());
        } else if (item instanceof Item.FittedFigure fitted) {
            return figure(fitted.value().value(), fitted.unit()) + " ± "
                    + figure(fitted.uncertainty().value(), fitted.unit());
        } else if (item instanceof Item.Range range) {
            return range(range);
        } else if (item instanceof Item.Text text) {
            return text.shown();
        } else if (item instanceof Item.Flag flag) {
            return Words.of(flag.yes() ? "text.yes" : "text.no");
        } else if (item instanceof Item.Count count) {
            return Integer.toString(count.count());
        } else if (item instanceof Item.Lines lines) {
            return String.join("; ", lines.lines());
        }
        throw new IllegalStateException("a table inside a table: " + path + "." + item.key());
    }

    private String figure(double value, Unit unit) {
        return Lay.figure(unit.in(units, value), unit.places(units));
    }

    private static int widest(List<String> column) {
        return column.stream().mapToInt(Lay::columns).max().orElse(0);
    }

    private static List<String> side(List<List<String>> columns, int indent) {
        List<String> lines = new ArrayList<>();
        boolean noUnits = columns.stream().allMatch(column -> column.get(1).isEmpty());
        for (int row = 0; row < columns.get(0).size(); row++) {
            if (row == 1 && noUnits) {
                continue;
            }
            StringBuilder line = new StringBuilder(" ".repeat(indent));
            for (List<String> column : columns) {
                boolean number = column.subList(2, column.size()).stream()
                        .allMatch(c -> c.matches("|-?[\\d.]+( to -?[\\d.]+)?|(from|to) -?[\\d.]+"));
                String cell = column.get(row);
                line.append(number ? Lay.padLeft(cell, widest(column)) : Lay.pad(cell, widest(column)))
                        .append(GAP);
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    private static List<String> blocks(List<List<String>> columns, int indent) {
        List<String> lines = new ArrayList<>();
        int label = 0;
        for (List<String> column : columns) {
            label = Math.max(label, Lay.columns(column.get(0)));
        }
        for (int row = 2; row < columns.get(0).size(); row++) {
            for (int i = 0; i < columns.size(); i++) {
                List<String> column = columns.get(i);
                String head = " ".repeat(indent) + (i == 0 ? "- " : "  ") + column.get(0);
                if (!column.get(row).isEmpty()) {
                    lines.addAll(Lay.wrap(head, indent + 2 + label + 2, column.get(row) + " " + column.get(1)));
                }
            }
        }
        return lines;
    }
}
