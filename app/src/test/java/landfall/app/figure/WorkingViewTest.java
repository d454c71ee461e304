// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Step;
import landfall.working.Trust;
import org.junit.jupiter.api.Test;

class WorkingViewTest {
    private static final Rule L = Rule.given("L", "mm", "lead");
    private static final Rule SHIFT = Rule.given("x", "mm", "shift of the edge");
    private static final Rule ANGLE =
            new Rule("lam", "atan(L / (pi * 8)) + x", "deg", Source.of("derived", ""), Trust.DERIVED, "lead angle");
    private static final List<Step> STEPS = List.of(new Step(L, 1.25), new Step(SHIFT, -0.5), new Step(ANGLE, 2.3477));

    @Test
    void numbersTakeThePlaceOfSymbolsButNotOfFunctionsAndConstants() {
        StepView view = new WorkingView(STEPS).of(ANGLE, 2.3477).get(0);
        assertThat(view.formula()).isEqualTo("atan(L / (pi * 8)) + x");
        assertThat(view.numbers()).isEqualTo("atan(1.25 / (pi * 8)) + (-0.5)");
        assertThat(view.result()).isEqualTo("2.3477°");
    }

    @Test
    void theInputsOfAFormulaFollowIt() {
        assertThat(new WorkingView(STEPS).of(ANGLE, 2.3477))
                .extracting(StepView::symbol)
                .containsExactly("lam", "L", "x");
    }

    @Test
    void aGivenFigureHasNoFormulaToFollow() {
        assertThat(new WorkingView(STEPS).of(L, 1.25)).singleElement().matches(step -> !step.isComputed());
    }

    @Test
    void aFormulaTakesWhatWasLastWrittenBeforeIt() {
        Rule twice = new Rule("y", "2 * L", "mm", Source.of("derived", ""), Trust.DERIVED, "twice the lead");
        var view = new WorkingView(List.of(new Step(L, 1), new Step(twice, 2), new Step(L, 3), new Step(twice, 6)));
        assertThat(view.of(twice, 2).get(0).numbers()).isEqualTo("2 * 1");
        assertThat(view.of(twice, 6).get(0).numbers()).isEqualTo("2 * 3");
        assertThat(view.all()).extracting(StepView::result).containsExactly("1 mm", "2 mm", "3 mm", "6 mm");
    }

    @Test
    void aRuleThatLeftNoStepShowsNone() {
        assertThat(new WorkingView(List.of()).of(L, 1.25)).isEmpty();
    }
}
