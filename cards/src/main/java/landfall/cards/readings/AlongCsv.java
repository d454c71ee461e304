// SPDX-License-Identifier: Apache-2.0
package landfall.cards.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.cards.entry.NumberEntry;
import landfall.fault.Answer;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;

/**
 * Dial readings along one edge of the chamfer as a {@link Table}: {@code along_mm,reading_mm}, either of them in inches
 * as {@code along_in}, {@code reading_in}. The place grows from the point towards the shank.
 */
public final class AlongCsv {
    private static final List<String> COLUMNS = List.of("along_mm", "along_in", "reading_mm", "reading_in", "note");

    private AlongCsv() {}

    /**
     * The readings in the order written; every bad cell is found at once.
     *
     * @param bare the unit of readings without named columns
     */
    public static Answer<List<AlongRow>> read(String text, UnitSystem bare) {
        boolean bareInch = bare == UnitSystem.INCH && !text.contains("along_mm");
        boolean inch = bareInch || text.contains("along_in");
        String place = inch ? "along_in" : "along_mm";
        List<String> typed = List.of(place, bare == UnitSystem.INCH ? "reading_in" : "reading_mm");
        Table table = new Table(text, new Table.Shape("along", COLUMNS, List.of(place), typed));
        List<AlongRow> rows = new ArrayList<>();
        for (Table.Line line : table.lines()) {
            Optional<Length> along = table.cell(line, place, NumberEntry::read)
                    .map(number -> inch ? Length.ofInch(number) : Length.ofMm(number));
            Optional<Length> value = ReadingsCsv.value(table, line);
            if (along.isPresent() && value.isPresent()) {
                rows.add(new AlongRow(line.number(), along.get(), value.get()));
            }
        }
        return table.answer(rows);
    }
}
