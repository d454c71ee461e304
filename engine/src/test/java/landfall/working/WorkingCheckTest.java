// SPDX-License-Identifier: Apache-2.0
package landfall.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class WorkingCheckTest {
    private static final Step P = new Step(Rule.given("P", "mm", "pitch"), 1.5);
    private static final Step D = new Step(Rule.given("d", "mm", "major diameter"), 10);

    private static Step computed(String symbol, String formula, double value) {
        Rule rule = new Rule(symbol, formula, "mm", Source.of("iso-68-1", "basic profile"), Trust.STANDARD, "a test");
        return new Step(rule, value);
    }

    @Test
    void stepsThatHoldPass() {
        Step pitchDiameter = computed("d2", "d - 3/8 * sqrt(3) * P", 10 - 3.0 / 8 * Math.sqrt(3) * 1.5);
        WorkingCheck.everyFormulaGivesItsFigure(
                List.of(P, D, pitchDiameter, computed("r", "d2 / 2", pitchDiameter.value() / 2)));
    }

    @Test
    void aFormulaThatPartsFromItsFigureIsShownWithTheFiguresBeforeIt() {
        assertThatThrownBy(() -> WorkingCheck.everyFormulaGivesItsFigure(List.of(P, D, computed("h", "d - P", 8.4))))
                .isInstanceOf(AssertionError.class)
                .hasMessage("1 of 3 steps do not hold:\n"
                        + "  h = d - P gives 8.5, but 8.4 is recorded (iso-68-1, basic profile), with {P=1.5, d=10.0}");
    }

    @Test
    void aStepMayUseOnlyWhatStandsBeforeIt() {
        assertThat(WorkingCheck.findings(List.of(P, computed("h", "d - P", 8.5), D)))
                .containsExactly("h: formula 'd - P' at place 1: no step before it has the symbol d");
    }

    @Test
    void aFigureWrittenAgainIsTakenByTheFormulasAfterIt() {
        Step later = new Step(Rule.given("P", "mm", "pitch"), 2);
        assertThat(WorkingCheck.findings(List.of(P, D, computed("h", "d - P", 8.5), later, computed("h", "d - P", 8))))
                .isEmpty();
    }

    @Test
    void aSymbolKeepsItsUnit() {
        assertThat(WorkingCheck.findings(List.of(P, new Step(Rule.given("P", "deg", "an angle"), 2.5))))
                .containsExactly("symbol P is in mm and in deg");
    }

    @Test
    void noNumberIsAFinding() {
        assertThat(WorkingCheck.findings(List.of(P, computed("x", "sqrt(-P)", Double.NaN))))
                .hasSize(2)
                .anyMatch(finding -> finding.equals("x is recorded as NaN"));
    }

    @Test
    void noStepsAtAllIsAFinding() {
        assertThat(WorkingCheck.findings(List.of())).containsExactly("there are no steps at all");
    }
}
