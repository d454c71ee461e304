// SPDX-License-Identifier: Apache-2.0
package landfall.cards.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.cards.form.Nearest;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * A table as people keep it: the first line that is neither blank nor begins with {@code #} names the columns, in any
 * order. Where it holds a figure instead, as when somebody types the readings in, the columns are the usual ones.
 * Columns are parted by commas, by semicolons or tabs where commas are decimal signs, or by blanks. Bad cells are
 * gathered, each with its line.
 */
final class Table {
    private static final int MOST = 10_000;
    private static final Pattern LINE = Pattern.compile("\\.line (\\d+)");

    /**
     * What a table may hold.
     *
     * @param name of the field that it is typed in
     * @param columns that there can be
     * @param needed columns that must be there, besides a reading
     * @param typed columns of readings that somebody types without naming any
     */
    record Shape(String name, List<String> columns, List<String> needed, List<String> typed) {
        String example() {
            return String.join(",", needed) + ",reading_mm";
        }
    }

    /** A line of cells with its number in the file. */
    record Line(int number, List<String> cells) {}

    private final Shape shape;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private String parting = ",";
    private Map<String, Integer> columns = Map.of();

    Table(String text, Shape shape) {
        this.shape = shape;
        List<String> all = text.strip().replaceFirst("^\\ufeff", "").lines().toList();
        int head = 0;
        while (head < all.size() && isEmpty(all.get(head))) {
            head++;
        }
        if (head == all.size()) {
            refuse("", "has no line of columns", "begin with " + shape.example());
            return;
        }
        if (all.size() > MOST) {
            refuse(all.size() + " lines", "is more than " + MOST + " lines", "give one set of readings a file");
            return;
        }
        String first = all.get(head);
        parting = parting(first);
        boolean named = !first.strip().matches("[-+.\\d].*");
        head(named ? cells(first) : shape.typed());
        for (int i = named ? head + 1 : head; i < all.size() && !columns.isEmpty(); i++) {
            if (!isEmpty(all.get(i))) {
                line(i + 1, cells(all.get(i)));
            }
        }
        if (findings.isEmpty() && lines.isEmpty()) {
            refuse("", "has columns and no readings", "write a line for each reading");
        }
    }

    /** The rows that a reader made of the lines, or every bad cell. */
    <T> Answer<List<T>> answer(List<T> rows) {
        List<Finding> inOrder =
                findings.stream().sorted(Comparator.comparingInt(Table::lineOf)).toList();
        return inOrder.isEmpty() ? Answer.of(List.copyOf(rows)) : Answer.refused(inOrder);
    }

    List<Line> lines() {
        return lines;
    }

    boolean has(String column) {
        return columns.containsKey(column);
    }

    String text(String column, Line line) {
        int i = columns.getOrDefault(column, -1);
        return i < 0 || i >= line.cells().size() ? "" : line.cells().get(i);
    }

    <T> Optional<T> cell(Line line, String column, Function<String, Answer<T>> reader) {
        Answer<T> answer = reader.apply(text(column, line));
        for (Finding finding : answer.findings()) {
            found("line " + line.number() + "." + column, finding.given(), finding.why(), finding.mend());
        }
        return answer instanceof Answer.Of<T> of ? Optional.of(of.value()) : Optional.empty();
    }

    /** Line of a finding; 0 where it is of the whole table. */
    private static int lineOf(Finding finding) {
        Matcher line = LINE.matcher(finding.field());
        return line.find() ? Integer.parseInt(line.group(1)) : 0;
    }

    private static boolean isEmpty(String line) {
        return line.isBlank() || line.strip().startsWith("#");
    }

    private void refuse(String given, String why, String mend) {
        findings.add(new Finding(shape.name(), given, why, mend));
    }

    private static String parting(String line) {
        for (String parting : List.of(";", "\t", ",")) {
            if (line.contains(parting)) {
                return parting;
            }
        }
        return " ";
    }

    private List<String> cells(String line) {
        String[] cells = parting.equals(" ") ? line.strip().split("\\s+") : line.split(parting, -1);
        return Arrays.stream(cells)
                .map(cell -> cell.strip().replaceAll("^\"|\"$", "").strip())
                .toList();
    }

    private void head(List<String> names) {
        Map<String, Integer> found = new HashMap<>();
        String line = String.join(parting, names);
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i).toLowerCase(Locale.ROOT);
            if (!shape.columns().contains(name)) {
                found(
                        "columns",
                        names.get(i),
                        "is not a column of readings",
                        "write " + Nearest.of(name, shape.columns()));
            } else if (found.put(name, i) != null) {
                found("columns", name, "stands twice", "keep one column of that name");
            }
        }
        for (String needed : shape.needed()) {
            if (!found.containsKey(needed)) {
                found("columns", line, "has no column " + needed, "begin with " + shape.example());
            }
        }
        if (found.containsKey("reading_mm") == found.containsKey("reading_in")) {
            found("columns", line, "must have one of reading_mm and reading_in", "begin with " + shape.example());
        }
        columns = findings.isEmpty() ? found : Map.of();
    }

    private void line(int number, List<String> cells) {
        if (cells.size() > columns.values().stream().mapToInt(i -> i).max().orElse(0) + 1
                && cells.stream().skip(columns.size()).anyMatch(cell -> !cell.isEmpty())) {
            found(
                    "line " + number,
                    String.join(parting, cells),
                    "has more cells than columns",
                    "part columns by semicolons where commas are decimal signs");
            return;
        }
        lines.add(new Line(number, cells));
    }

    private void found(String where, String given, String why, String mend) {
        findings.add(new Finding(shape.name() + "." + where, given, why, mend));
    }
}
