// SPDX-License-Identifier: Apache-2.0
package landfall.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The drill series")
class DrillSeriesTest {
    /** Five sizes from memory, not taken from the table under test; the last digit printed decides. */
    @ParameterizedTest(name = "{0} is {1} in")
    @CsvSource({"#7,0.2010", "F,0.2570", "#21,0.1590", "#29,0.1360", "U,0.3680"})
    void agreesWithRememberedSizes(String name, double inch) {
        assertThat(DrillSeries.named(name).orElseThrow().diameter().inch()).isCloseTo(inch, within(0.00005));
    }

    @Test
    void aHigherNumberIsAThinnerDrill() {
        List<Integer> numbers = DrillSeries.of(Drawer.NUMBER).stream()
                .map(drill -> Integer.valueOf(drill.name()))
                .toList();
        assertThat(numbers).hasSize(80).isSortedAccordingTo((a, b) -> b - a).doesNotHaveDuplicates();
        assertGrowing(DrillSeries.of(Drawer.NUMBER));
    }

    @Test
    void aLaterLetterIsAThickerDrillAndLettersFollowNumbers() {
        List<Drill> letters = DrillSeries.of(Drawer.LETTER);
        assertThat(letters.stream().map(Drill::name))
                .hasSize(26)
                .isSorted()
                .startsWith("A")
                .endsWith("Z");
        assertGrowing(letters);
        assertThat(letters.get(0).diameter())
                .isGreaterThan(DrillSeries.of(Drawer.NUMBER).get(79).diameter());
    }

    @Test
    void fractionsStepByASixtyFourthExactly() {
        List<Drill> fractions = DrillSeries.of(Drawer.FRACTION);
        assertThat(fractions).hasSize(112);
        for (int i = 0; i < 112; i++) {
            assertThat(fractions.get(i).diameter().inch() * 64).isCloseTo(i + 1, within(1e-12));
        }
    }

    @Test
    void aFractionIsNamedByItsDiameter() {
        for (Drill drill : DrillSeries.of(Drawer.FRACTION)) {
            double inch = 0;
            for (String part : drill.name().split(" ")) {
                String[] over = part.split("/");
                inch += over.length == 1
                        ? Double.parseDouble(part)
                        : Double.parseDouble(over[0]) / Double.parseDouble(over[1]);
            }
            assertThat(drill.diameter().inch()).as(drill.name()).isCloseTo(inch, within(1e-12));
        }
    }

    @ParameterizedTest
    @CsvSource({"#7,7", "# 7,7", "No. 7,7", "no7,7", "Nr. 07,7", "number 7 drill,7", "f,F", "letter F,F", "F drill,F"})
    void namesAreReadAsPeopleWriteThem(String text, String name) {
        assertThat(DrillSeries.named(text).orElseThrow().name()).isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource({"7", "7 mm", "#0", "#81", "#007 mm", "FF", "27/64", "letter", "''"})
    void otherTextsAreNoDrillNames(String text) {
        assertThat(DrillSeries.named(text)).isEmpty();
    }

    @Test
    void aDrillIsCalledAsTheShopWritesIt() {
        assertThat(DrillSeries.named("no. 7").orElseThrow().called()).isEqualTo("#7");
        assertThat(DrillSeries.named("f").orElseThrow().called()).isEqualTo("F");
    }

    private static void assertGrowing(List<Drill> drills) {
        for (int i = 1; i < drills.size(); i++) {
            assertThat(drills.get(i).diameter()).isGreaterThan(drills.get(i - 1).diameter());
        }
    }
}
