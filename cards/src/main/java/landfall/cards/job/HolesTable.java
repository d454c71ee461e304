// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import landfall.cards.form.Nearest;
import landfall.fault.Finding;
import org.jspecify.annotations.Nullable;

/**
 * Holes as a table (RFC 4180): a line of columns in any order, then a line for each hole; parted by commas, semicolons
 * or tabs, whichever the line of columns has. Blank lines and those that begin with {@code #} are passed over. A text
 * with a mark of parting in it stands in quotation marks.
 */
final class HolesTable {
    private static final String EXAMPLE = "callout,material,depth,kind,count,label,note";
    private static final char NO_TEXT = '\uFFFD';

    private final List<Amiss> amiss = new ArrayList<>();
    private final List<HoleRow> rows = new ArrayList<>();
    private List<String> columns = List.of();
    private char parting = ',';

    private HolesTable() {}

    static JobGiven read(String text) {
        HolesTable table = new HolesTable();
        List<String> lines = text.replaceFirst("^\\ufeff", "").lines().toList();
        for (int i = 0; i < lines.size() && table.goesOn(); i++) {
            String line = lines.get(i);
            if (!line.isBlank() && !line.stripLeading().startsWith("#")) {
                table.line(i + 1, line);
            }
        }
        if (table.columns.isEmpty() && table.amiss.isEmpty()) {
            table.refuse(0, "columns", "", "are missing: there is no line at all", "begin with " + EXAMPLE);
        }
        return new JobGiven(Map.of(), table.rows, table.amiss);
    }

    /** Without columns that are understood no line can be. */
    private boolean goesOn() {
        return amiss.stream().noneMatch(one -> one.finding().field().equals("columns"));
    }

    private void refuse(int at, String field, String given, String why, String mend) {
        amiss.add(new Amiss(at, new Finding(field, given, why, mend)));
    }

    private void line(int at, String line) {
        if (columns.isEmpty()) {
            head(line);
            return;
        }
        List<String> cells = cells(line);
        if (cells == null) {
            refuse(at, "line", line, "has a quotation mark that is not closed", "close it, or write it twice");
            return;
        }
        if (line.indexOf(NO_TEXT) >= 0) {
            refuse(at, "line", line, "is not text in UTF-8", "save the table as UTF-8");
        }
        if (cells.size() > columns.size()) {
            refuse(
                    at,
                    "line",
                    line,
                    "has " + cells.size() + " cells for " + columns.size() + " columns",
                    "put a text with a " + (parting == '\t' ? "tab" : parting) + " in it in quotation marks");
        }
        Map<String, String> told = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(cells.size(), columns.size()); i++) {
            String cell = cells.get(i).strip();
            if (!cell.isEmpty()) {
                told.put(columns.get(i), cell);
            }
        }
        rows.add(new HoleRow(at, told));
    }

    private void head(String line) {
        parting = line.indexOf(';') >= 0 ? ';' : line.indexOf('\t') >= 0 ? '\t' : ',';
        List<String> known = JobForms.HOLE.paths();
        List<String> cells = cells(line);
        List<String> names = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String cell : cells == null ? List.<String>of(line) : cells) {
            String name = cell.strip().toLowerCase(Locale.ROOT);
            names.add(name);
            if (!known.contains(name)) {
                refuse(
                        0,
                        "columns",
                        cell.strip(),
                        "is not a column of holes",
                        "did you mean " + Nearest.of(name, known) + "? Begin with " + EXAMPLE);
            } else if (!seen.add(name)) {
                refuse(0, "columns", name, "stands twice", "leave one of the two out");
            }
        }
        JobForms.HOLE.fields().stream()
                .filter(field -> field.required() && !seen.contains(field.path()))
                .forEach(field ->
                        refuse(0, "columns", line.strip(), "have no " + field.path(), "begin with " + EXAMPLE));
        columns = names;
    }

    /** Null where a quotation mark stays open; a quotation mark in a text is written twice. */
    private @Nullable List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append(c);
                i++;
            } else if (c == '"' && (quoted || cell.toString().isBlank())) {
                quoted = !quoted;
            } else if (c == parting && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return quoted ? null : cells;
    }
}
