// SPDX-License-Identifier: Apache-2.0
package landfall.cards.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
 * Dial readings as a {@link Table}: {@code land,angle_deg,reading_mm} or {@code reading_in}, and {@code place} when the
 * dial moved. Typed without columns they are land, angle, reading and place, and the reading's unit is the one that
 * bare figures have. A reading's unit is its column's, leading point or not.
 */
public final class ReadingsCsv {
    private static final List<String> COLUMNS =
            List.of("land", "angle_deg", "reading_mm", "reading_in", "place", "note");

    private ReadingsCsv() {}

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
        return read("readings", text, bare);
    }

    /** The same from a field of another name. */
    public static Answer<List<Row>> read(String field, String text, UnitSystem bare) {
        String reading = bare == UnitSystem.INCH ? "reading_in" : "reading_mm";
        List<String> typed = List.of("land", "angle_deg", reading, "place");
        Table table = new Table(text, new Table.Shape(field, COLUMNS, List.of("land", "angle_deg"), typed));
        List<Row> rows = new ArrayList<>();
        for (Table.Line line : table.lines()) {
            row(table, line).ifPresent(rows::add);
        }
        return table.answer(rows);
    }

    private static Optional<Row> row(Table table, Table.Line line) {
        Optional<Integer> land = table.cell(line, "land", ReadingsCsv::land);
        Optional<Angle> angle = table.cell(line, "angle_deg", AngleEntry::read);
        Optional<Length> value = value(table, line);
        Optional<Place> place =
                table.text("place", line).isEmpty() ? Optional.empty() : table.cell(line, "place", ReadingsCsv::place);
        return land.isPresent() && angle.isPresent() && value.isPresent()
                ? Optional.of(new Row(line.number(), land.get(), angle.get(), value.get(), place))
                : Optional.empty();
    }

    static Optional<Length> value(Table table, Table.Line line) {
        boolean inch = table.has("reading_in");
        return table.cell(line, inch ? "reading_in" : "reading_mm", NumberEntry::read)
                .map(number -> inch ? Length.ofInch(number) : Length.ofMm(number));
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
