// SPDX-License-Identifier: Apache-2.0
package landfall.cards.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import landfall.fault.Finding;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Dial readings as a table")
class ReadingsCsvTest {
    static List<String> refused(String text) {
        return ReadingsCsv.read(text).findings().stream().map(Finding::sentence).toList();
    }

    @Test
    void readingsKeepTheirOrderTheirSignAndTheirLine() {
        assertThat(ReadingsCsv.read("""
                        # third regrind
                        land,angle_deg,reading_mm,place

                        1,0,0,end
                        2,12.5,-0.04,chamfer-working
                        1,30,.02,
                        """).orThrow())
                .containsExactly(
                        new Row(4, 1, Angle.ZERO, Length.ZERO, Optional.of(Place.END)),
                        new Row(5, 2, Angle.ofDeg(12.5), Length.ofMm(-0.04), Optional.of(Place.CHAMFER_WORKING)),
                        new Row(6, 1, Angle.ofDeg(30), Length.ofMm(0.02), Optional.empty()));
    }

    @Test
    void inchReadingsAndColumnsInAnyOrder() {
        assertThat(ReadingsCsv.read("reading_in,land,angle_deg\r\n-.0005,3,10\r\n")
                        .orThrow())
                .containsExactly(new Row(2, 3, Angle.ofDeg(10), Length.ofInch(-0.0005), Optional.empty()));
    }

    @Test
    void semicolonsGoWithDecimalCommas() {
        assertThat(ReadingsCsv.read("\ufeffland;angle_deg;reading_mm\n1;2,5;-0,04\n")
                        .orThrow())
                .containsExactly(new Row(2, 1, Angle.ofDeg(2.5), Length.ofMm(-0.04), Optional.empty()));
    }

    /** As somebody types them from the bench: no names, blanks between, the tap's own unit. */
    @Test
    void readingsTypedWithoutNamesAreLandAngleReading() {
        assertThat(ReadingsCsv.read("1 0 0\n\n1 20  -.17 chamfer-still\n", UnitSystem.METRIC)
                        .orThrow())
                .containsExactly(
                        new Row(1, 1, Angle.ZERO, Length.ZERO, Optional.empty()),
                        new Row(3, 1, Angle.ofDeg(20), Length.ofMm(-0.17), Optional.of(Place.CHAMFER_STILL)));
        assertThat(ReadingsCsv.read("2, 5, -.004", UnitSystem.INCH).orThrow())
                .containsExactly(new Row(1, 2, Angle.ofDeg(5), Length.ofInch(-0.004), Optional.empty()));
    }

    @Test
    void everyBadCellIsFoundAtOnceWithItsLine() {
        assertThat(refused("land,angle_deg,reading_mm,place\n0,5,0.01,end\n1,x,0.01,\n2,5,,ende\n1,5,0,01,end"))
                .containsExactly(
                        "readings.line 2.land: \"0\" is not the number of a land. "
                                + "To mend: count the lands backwards from 1.",
                        "readings.line 3.angle_deg: \"x\" is not an angle. To mend: write 2.5 deg or 2°30'.",
                        "readings.line 4.reading_mm: \"\" is empty. To mend: write 0.001 or 1:1000.",
                        "readings.line 4.place: \"ende\" must be one of end, shank, flank, crest, chamfer-still, "
                                + "chamfer-working. To mend: write end.",
                        "readings.line 5: \"1,5,0,01,end\" has more cells than columns. "
                                + "To mend: part columns by semicolons where commas are decimal signs.");
    }

    @Test
    void theColumnsMustBeThere() {
        assertThat(refused(""))
                .containsExactly(
                        "readings: \"\" has no line of columns. To mend: begin with land,angle_deg,reading_mm.");
        assertThat(refused("land,angel_deg,reading_mm\n1,0,0"))
                .containsExactly(
                        "readings.columns: \"angel_deg\" is not a column of readings. To mend: write angle_deg.",
                        "readings.columns: \"land,angel_deg,reading_mm\" has no column angle_deg. "
                                + "To mend: begin with land,angle_deg,reading_mm.");
        assertThat(refused("land,angle_deg\n1,0"))
                .containsExactly("readings.columns: \"land,angle_deg\" must have one of reading_mm and reading_in. "
                        + "To mend: begin with land,angle_deg,reading_mm.");
        assertThat(refused("land,angle_deg,reading_mm\n"))
                .containsExactly("readings: \"\" has columns and no readings. To mend: write a line for each reading.");
    }

    @Test
    void noTextBreaksTheReader() {
        Random random = new Random(41);
        String table = "land,angle_deg,reading_mm,place\n1,0,0.00,end\n1,10,-0.05,end\n2,0,0.01,\n";
        for (int i = 0; i < 5_000; i++) {
            StringBuilder text = new StringBuilder(table);
            for (int change = random.nextInt(5); change >= 0; change--) {
                text.setCharAt(random.nextInt(text.length()), ",;\n\t\"#0x.- é\u0000".charAt(random.nextInt(13)));
            }
            assertThat(ReadingsCsv.read(text.toString()).findings())
                    .allSatisfy(finding -> assertThat(finding.mend()).isNotBlank());
        }
    }
}
