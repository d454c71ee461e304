// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.CallOut;
import landfall.thread.ScrewThread;
import landfall.thread.callout.CallOuts;
import landfall.working.Pen;
import landfall.working.Recorded;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The limit marked on a tap")
class LimitMarkTest {
    private static ScrewThread thread(String callOut) {
        CallOut read = CallOuts.read(callOut).orThrow();
        return read.thread();
    }

    private static Limits limits(String mark, String callOut, double t) {
        return LimitMark.read(mark).orElseThrow().on(thread(callOut), Length.ofMm(t), Pen.NONE);
    }

    /** Machinery's Handbook 31st ed., p. 972: the worked 3/8-16 taps; limits to the last printed place. */
    @ParameterizedTest
    @CsvSource({"H1,3/8-16,.3344,.3349", "L2,3/8-16,.3334,.3339", "GH5,3/8-16,.3364,.3369", "H3,1/4-20,.2185,.2190"})
    void inchMarksAgreeWithTheHandbook(String mark, String callOut, double min, double max) {
        Limits limits = limits(mark, callOut, 0);
        assertThat(limits.min().inch()).isCloseTo(min, within(1e-9));
        assertThat(limits.max().inch()).isCloseTo(max, within(1e-9));
    }

    /** A tap maker's list, micrometres above the basic pitch diameter; printed to whole micrometres. */
    @ParameterizedTest
    @CsvSource({"D4,M5x0.8,32,52", "D5,M6x1,40,65", "D5,M8x1.25,34,65", "D6,M10x1.5,47,78"})
    void dNumbersAgreeWithAMakersList(String mark, String callOut, double min, double max) {
        double basic = thread(callOut).pitchDiameter().mm();
        Limits limits = limits(mark, callOut, 0);
        assertThat((limits.min().mm() - basic) * 1000).isCloseTo(min, within(0.5));
        assertThat((limits.max().mm() - basic) * 1000).isCloseTo(max, within(0.5));
    }

    /** A tap maker's chart of classes by t; micrometres, printed whole. */
    @ParameterizedTest
    @CsvSource({
        "class 2,M10x1.5,140,42,70",
        "class 1,M6x1,118,12,35",
        "ISO3,M12x1.75,160,80,112",
        "Class 2,M3x0.5,80,24,40"
    })
    void classesArePartsOfTheNutsTolerance(String mark, String callOut, double t, double min, double max) {
        double basic = thread(callOut).pitchDiameter().mm();
        Limits limits = limits(mark, callOut, t / 1000);
        assertThat((limits.min().mm() - basic) * 1000).isCloseTo(min, within(0.51));
        assertThat((limits.max().mm() - basic) * 1000).isCloseTo(max, within(0.51));
    }

    @Test
    void aDNumberOnAPitchThatIsNotHeldLeavesTheLowerEndOpen() {
        Limits limits = limits("D7", "M16x2", 0);
        assertThat(limits.min()).isNull();
        assertThat(limits.max().minus(thread("M16x2").pitchDiameter()).mm()).isCloseTo(0.091, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"H3 1/4-20", "L2 3/8-16", "D5 M8x1.25", "ISO2 M10x1.5"})
    void everyPrintedFormulaGivesItsFigure(String both) {
        String[] parts = both.split(" ", 2);
        Recorded pen = new Recorded();
        LimitMark.read(parts[0]).orElseThrow().on(thread(parts[1]), Length.ofMm(0.14), pen);
        WorkingCheck.everyFormulaGivesItsFigure(pen.steps());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "H", "X3", "3", "class 4", "6HX", "H333"})
    void otherMarksAreNotKnown(String text) {
        assertThat(LimitMark.read(text)).isEmpty();
    }

    @Test
    void aMarkOfTheOtherSystemIsRefused() {
        assertThatThrownBy(() -> limits("H3", "M8x1.25", 0))
                .isInstanceOf(OutOfRange.class)
                .hasMessage("limit: \"H 3\" must be D or class on a metric thread. "
                        + "To mend: read the mark again, or give limit.pitchMin and limit.pitchMax.");
        assertThatThrownBy(() -> LimitMark.read("H0"))
                .isInstanceOf(OutOfRange.class)
                .hasMessage("limit: \"H 0\" must be from 1 to 20. To mend: read the mark on the shank again.");
    }
}
