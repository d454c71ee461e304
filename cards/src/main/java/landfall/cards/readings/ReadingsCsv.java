// SPDX-License-Identifier: Apache-2.0
package landfall.cards.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import landfall.cards.entry.AngleEntry;
import landfall.cards.entry.NumberEntry;
import landfall.cards.form.Nearest;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;

/**
 * Dial readings as a table: {@code land,angle_deg,reading_mm} or {@code reading_in}, and {@code place} when the dial
 * moved.
 *
 * <p>The first line that is neither blank nor begins with {@code #} names the columns, in any order. Where it holds a
 * reading instead, as when somebody types them in, the columns are land, angle, reading and place, and the reading's
 * unit is the one that bare figures have. Columns are parted by commas, by semicolons or tabs where commas are decimal
 * signs, or by blanks. A reading's unit is its column's, leading point or not.
 */
public final class ReadingsCsv {
    private static final List<String> COLUMNS =
            List.of("land", "angle_deg", "reading_mm", "reading_in", "place", "note");
    /** The columns of readings that somebody types without naming any. */
    private static final List<String> TYPED_METRIC = List.of("land", "angle_deg", "reading_mm", "place");

    private static final List<String> TYPED_INCH = List.of("land", "angle_deg", "reading_in", "place");

    private static final int MOST = 10_000;

    private final List<Finding> findings = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private final String parting;
    private Map<String, Integer> columns = Map.of();

    private ReadingsCsv(String parting) {
        this.parting = parting;
    }

    /** The readings in the order written, with their columns named. */
    public static Answer<List<Row>> read(String text) {
        return read(text, UnitSystem.METRIC);
    }

    /**
     * The readings in the order written; every bad cell is found at once.
     *
     * @param bare the unit of readings without named columns
     */
    public static Answer<List<Row>> read(String text, UnitSystem bare) {
        List<String> lines = text.strip().replaceFirst("^\\ufeff", "").lines().toList();
        int head = 0;
        while (head < lines.size() && isEmpty(lines.get(head))) {
            head++;
        }
        if (head == lines.size()) {
            return refused("", "has no line of columns", "begin with land,angle_deg,reading_mm");
        }
        if (lines.size() > MOST) {
            return refused(
                    lines.size() + " lines", "is more than " + MOST + " lines", "give one set of readings a file");
        }
        String first = lines.get(head);
        ReadingsCsv csv = new ReadingsCsv(parting(first));
        boolean named = !first.strip().matches("[-+.\\d].*");
        csv.head(named ? csv.cells(first) : bare == UnitSystem.INCH ? TYPED_INCH : TYPED_METRIC);
        for (int i = named ? head + 1 : head; i < lines.size() && !csv.columns.isEmpty(); i++) {
            if (!isEmpty(lines.get(i))) {
                csv.row(i + 1, csv.cells(lines.get(i)));
            }
        }
        if (csv.findings.isEmpty() && csv.rows.isEmpty()) {
            return refused("", "has columns and no readings", "write a line for each reading");
        }
        return csv.findings.isEmpty() ? Answer.of(List.copyOf(csv.rows)) : Answer.refused(csv.findings);
    }

    private static String parting(String line) {
        for (String parting : List.of(";", "\t", ",")) {
            if (line.contains(parting)) {
                return parting;
            }
        }
        return " ";
    }

    private static boolean isEmpty(String line) {
        return line.isBlank() || line.strip().startsWith("#");
    }

    private static <T> Answer<T> refused(String given, String why, String mend) {
        return Answer.refused(new Finding("readings", given, why, mend));
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
            if (!COLUMNS.contains(name)) {
                found("columns", names.get(i), "is not a column of readings", "write " + Nearest.of(name, COLUMNS));
            } else if (found.put(name, i) != null) {
                found("columns", name, "stands twice", "keep one column of that name");
            }
        }
        for (String needed : List.of("land", "angle_deg")) {
            if (!found.containsKey(needed)) {
                found("columns", line, "has no column " + needed, "begin with land,angle_deg,reading_mm");
            }
        }
        if (found.containsKey("reading_mm") == found.containsKey("reading_in")) {
            found(
                    "columns",
                    line,
                    "must have one of reading_mm and reading_in",
                    "begin with land,angle_deg,reading_mm");
        }
        columns = findings.isEmpty() ? found : Map.of();
    }

    private void row(int line, List<String> cells) {
        if (cells.size() > columns.values().stream().mapToInt(i -> i).max().orElse(0) + 1
                && cells.stream().skip(columns.size()).anyMatch(cell -> !cell.isEmpty())) {
            found(
                    "line " + line,
                    String.join(parting, cells),
                    "has more cells than columns",
                    "part columns by semicolons where commas are decimal signs");
            return;
        }
        Optional<Integer> land = cell(line, "land", cells, ReadingsCsv::land);
        Optional<Angle> angle = cell(line, "angle_deg", cells, AngleEntry::read);
        boolean inch = columns.containsKey("reading_in");
        Optional<Length> value = cell(line, inch ? "reading_in" : "reading_mm", cells, NumberEntry::read)
                .map(number -> inch ? Length.ofInch(number) : Length.ofMm(number));
        Optional<Place> place =
                columns.containsKey("place") && !text("place", cells).isEmpty()
                        ? cell(line, "place", cells, ReadingsCsv::place)
                        : Optional.empty();
        if (land.isPresent() && angle.isPresent() && value.isPresent()) {
            rows.add(new Row(line, land.get(), angle.get(), value.get(), place));
        }
    }

    private String text(String column, List<String> cells) {
        int i = columns.getOrDefault(column, -1);
        return i < 0 || i >= cells.size() ? "" : cells.get(i);
    }

    private <T> Optional<T> cell(int line, String column, List<String> cells, Function<String, Answer<T>> reader) {
        Answer<T> answer = reader.apply(text(column, cells));
        for (Finding finding : answer.findings()) {
            found("line " + line + "." + column, finding.given(), finding.why(), finding.mend());
        }
        return answer instanceof Answer.Of<T> of ? Optional.of(of.value()) : Optional.empty();
    }

    private void found(String where, String given, String why, String mend) {
        findings.add(new Finding("readings." + where, given, why, mend));
    }

    private static Answer<Integer> land(String text) {
        return text.matches("[1-9]\\d?")
                ? Answer.of(Integer.valueOf(text))
                : Answer.refused(
                        new Finding("", text, "is not the number of a land", "count the lands backwards from 1"));
    }

    /** The place by its code. */
    public static Answer<Place> place(String text) {
        for (Place place : Place.values()) {
            if (place.code().equalsIgnoreCase(text.strip())) {
                return Answer.of(place);
            }
        }
        List<String> codes = Arrays.stream(Place.values()).map(Place::code).toList();
        return Answer.refused(new Finding(
                "", text, "must be one of " + String.join(", ", codes), "write " + Nearest.of(text, codes)));
    }
}
