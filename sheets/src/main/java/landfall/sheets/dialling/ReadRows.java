// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dialling;

import java.util.List;
import landfall.dialling.DialFindings;
import landfall.dialling.FitCourse;
import landfall.dialling.Outlier;
import landfall.dialling.Reading;
import landfall.quantity.Length;
import landfall.sheets.figure.Figures;

/** The readings as a table: what was read, what it should be, how far off it is, and what the fit leaves over. */
public final class ReadRows {
    private ReadRows() {}

    /**
     * One reading, rounded for the eye.
     *
     * @param should what it should read; empty when nothing is wanted
     * @param off read less should; empty when nothing is wanted
     * @param left read less fit
     * @param outlier whether the others do not bear it out
     */
    public record Row(int land, String angle, String read, Against against, boolean outlier) {
        /** What the reading is held against. */
        public record Against(String should, String off, String left) {}
    }

    /** In the order taken. */
    public static List<Row> of(DialFindings found, Figures figures) {
        List<Reading> outliers =
                found.fits().outliers().stream().map(Outlier::reading).toList();
        return found.course().readings().stream()
                .map(at -> row(at, outliers.contains(at.reading()), figures))
                .toList();
    }

    private static Row row(FitCourse.At at, boolean outlier, Figures figures) {
        Reading reading = at.reading();
        Length wanted = at.wanted();
        return new Row(
                reading.land(),
                Figures.plain(reading.angle().deg(), 2) + "\u00b0",
                figures.signed(reading.value()),
                new Row.Against(
                        wanted == null ? "" : figures.signed(wanted),
                        wanted == null ? "" : figures.signed(reading.value().minus(wanted)),
                        figures.signed(at.left())),
                outlier);
    }
}
