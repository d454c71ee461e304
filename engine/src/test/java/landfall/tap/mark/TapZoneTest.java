// SPDX-License-Identifier: Apache-2.0
package landfall.tap.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Rounding;
import landfall.thread.CallOut;
import landfall.thread.Table;
import landfall.thread.callout.CallOuts;
import landfall.working.Pen;
import landfall.working.Recorded;
import landfall.working.WorkingCheck;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The limits of a tap by its mark")
class TapZoneTest {
    private static CallOut callOut(String text) {
        return CallOuts.read(text).orThrow();
    }

    private static TapZone zone(String mark, String thread) {
        return TapZone.of(TapMark.read(mark).orElseThrow(), callOut(thread), Pen.NONE);
    }

    private final Map<String, int[]> agreement = new TreeMap<>();
    private final List<String> parted = new ArrayList<>();

    private void compare(String column, String row, @Nullable Length ours, String printed) {
        if (printed.isEmpty()) {
            return;
        }
        double inch = Objects.requireNonNull(ours).inch();
        boolean same = Math.abs(inch - Double.parseDouble(printed)) < 0.00005;
        int[] count = agreement.computeIfAbsent(column, any -> new int[2]);
        count[0] += same ? 1 : 0;
        count[1]++;
        if (!same) {
            parted.add("%s %s printed %s, ours %.4f".formatted(row, column, printed, inch));
        }
    }

    private Map<String, String> shown() {
        Map<String, String> shown = new TreeMap<>();
        agreement.forEach((column, count) -> shown.put(column, count[0] + "/" + count[1]));
        return shown;
    }

    /**
     * Every printed row: ground-thread and cut-thread taps, and the figures of the recommended limits. The one cell
     * that parts is the least major diameter of the ground 2-56, a place under the rule of all the others.
     */
    @Test
    void everyPrintedTapLimitIsGiven() {
        for (List<String> row : Table.at("/reference/tap-limits-inch.csv")) {
            String name = row.get(0) + " " + row.get(1);
            if (row.get(2).equals("basic")) {
                Length basic = Length.ofInch(Rounding.halfUp(
                        callOut(row.get(0)).thread().pitchDiameter().inch(), 4));
                compare("basic pitch diameter, " + row.get(5), name, basic, row.get(3));
                continue;
            }
            TapZone zone = zone(row.get(1), row.get(0));
            Limits limits = row.get(2).equals("major") ? zone.major() : zone.pitch();
            compare("least " + row.get(2) + ", " + row.get(5), name, limits.min(), row.get(3));
            compare("greatest " + row.get(2) + ", " + row.get(5), name, limits.max(), row.get(4));
        }
        assertThat(shown())
                .containsExactly(
                        Map.entry("basic pitch diameter, cut", "46/46"),
                        Map.entry("basic pitch diameter, ground", "25/25"),
                        Map.entry("greatest major, cut", "46/46"),
                        Map.entry("greatest major, ground", "22/22"),
                        Map.entry("greatest pitch, cut", "46/46"),
                        Map.entry("greatest pitch, ground", "36/36"),
                        Map.entry("greatest pitch, recommended", "68/68"),
                        Map.entry("greatest pitch, worked", "3/3"),
                        Map.entry("least major, cut", "46/46"),
                        Map.entry("least major, ground", "21/22"),
                        Map.entry("least pitch, cut", "46/46"),
                        Map.entry("least pitch, ground", "36/36"),
                        Map.entry("least pitch, recommended", "68/68"),
                        Map.entry("least pitch, worked", "3/3"));
        assertThat(parted).containsExactly("2-56 H3 least major, ground printed 0.0866, ours 0.0867");
    }

    /** A and B as reprinted; the three that part are on a rounding edge (0.00325, 0.00325, 0.01625). */
    @Test
    void theMajorRuleGivesThePrintedConstants() {
        for (List<String> row : Table.at("/reference/tap-major-constants.csv")) {
            Recorded pen = new Recorded();
            TapZone.of(TapMark.read("H3").orElseThrow(), callOut("2.0-" + row.get(0)), pen);
            pen.steps().stream()
                    .filter(step -> step.symbol().equals("A_t") || step.symbol().equals("B_t"))
                    .forEach(step -> compare(
                            step.symbol(),
                            row.get(0) + " tpi",
                            Length.ofInch(step.value()),
                            row.get(step.symbol().equals("A_t") ? 1 : 2)));
        }
        assertThat(shown()).containsExactly(Map.entry("A_t", "21/23"), Map.entry("B_t", "22/23"));
        assertThat(parted)
                .containsExactly(
                        "40 tpi A_t printed 0.0032, ours 0.0033",
                        "20 tpi B_t printed 0.0032, ours 0.0033",
                        "8 tpi A_t printed 0.0162, ours 0.0163");
    }

    /**
     * The handbook's pattern of cut-thread taps, under the printed table: least over basic .0002 in from 36 an inch,
     * .0005 to 3/4 in, then .0010.
     */
    @Test
    void cutThreadTapsKeepTheirPattern() {
        for (List<String> row : Table.at("/tap/cut-thread-limits.csv")) {
            CallOut thread = callOut(row.get(0) + "-" + row.get(1));
            double basic = Rounding.halfUp(thread.thread().pitchDiameter().inch(), 4);
            double over = Rounding.halfUp(Double.parseDouble(row.get(4)) - basic, 4);
            double D = thread.thread().major().inch();
            boolean fine = Double.parseDouble(row.get(1)) >= 36;
            assertThat(over).as(row.toString()).isEqualTo(fine ? 0.0002 : D < 0.8 ? 0.0005 : 0.0010);
        }
    }

    /**
     * t of M10 is 0.140 mm: ISO 2 0.042 to 0.070, 7G 0.098 to 0.126 over basic; least major 10.056 (a maker's chart).
     */
    @ParameterizedTest
    @CsvSource({
        "ISO 2,M10,9.068,9.096",
        "ISO2/6H,M10,9.068,9.096",
        "6H,M10,9.068,9.096",
        "4H,M10,9.040,9.068",
        "6G,M10,9.096,9.124",
        "7G,M10,9.124,9.152",
        "class 3,M10,9.096,9.124"
    })
    void metricClassesAreFifthsOfT(String mark, String thread, double min, double max) {
        TapZone zone = zone(mark, thread);
        assertThat(Objects.requireNonNull(zone.pitch().min()).mm()).isCloseTo(min, within(5e-4));
        assertThat(Objects.requireNonNull(zone.pitch().max()).mm()).isCloseTo(max, within(5e-4));
        assertThat(Objects.requireNonNull(zone.major().min()).mm()).isCloseTo(10.056, within(5e-4));
        assertThat(zone.major().max()).isNull();
    }

    @Test
    void anInsertTapHasItsPitchLimitsButNoMajorRule() {
        TapZone zone = zone("H3", "STI 1/4-20");
        // Machinery's Handbook 31, Part A, Table 25: 1/4-20 STI H3 .2835 to .2840
        assertThat(Objects.requireNonNull(zone.pitch().min()).inch()).isCloseTo(0.2835, within(1e-9));
        assertThat(Objects.requireNonNull(zone.pitch().max()).inch()).isCloseTo(0.2840, within(1e-9));
        assertThat(zone.major().min()).isNull();
        assertThat(zone.cautions()).extracting("code").containsExactly("majorNotHeld");
    }

    @ParameterizedTest
    @ValueSource(strings = {"H3", "L2", "cut thread", "+.0017"})
    void printedFormulasGiveTheirFigures(String mark) {
        Recorded pen = new Recorded();
        TapZone.of(TapMark.read(mark).orElseThrow(), callOut("1/4-20"), pen);
        WorkingCheck.everyFormulaGivesItsFigure(pen.steps());
    }

    @ParameterizedTest
    @ValueSource(strings = {"D5", "ISO 2", "7G"})
    void printedMetricFormulasGiveTheirFigures(String mark) {
        Recorded pen = new Recorded();
        TapZone.of(TapMark.read(mark).orElseThrow(), callOut("M8"), pen);
        WorkingCheck.everyFormulaGivesItsFigure(pen.steps());
    }

    @Test
    void aMarkOfTheOtherSystemIsRefused() {
        assertThatThrownBy(() -> zone("cut thread", "M8"))
                .isInstanceOf(OutOfRange.class)
                .hasMessage("marking: \"cut thread\" must be D5, ISO 2 or 6H on a metric thread. To mend: read the mark"
                        + " again, or give the tap's own limits.");
        assertThatThrownBy(() -> zone("cut thread", "2-4.5"))
                .isInstanceOf(OutOfRange.class)
                .hasMessage(
                        "marking: \"cut thread\" must be one of the sizes of the cut-thread tables, No. 0 to 1 1/4 in."
                                + " To mend: give the tap's own limits.");
    }
}
