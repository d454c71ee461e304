// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.thread.callout.CallOuts;
import landfall.thread.callout.StandardThreads;
import landfall.working.Pen;
import landfall.working.Worked;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Fit between the two threads")
class FitTest {
    private static Optional<Fit> fit(String callOut, Pen pen) {
        return Fit.of(CallOuts.read(callOut).orThrow(), MinorRounding.CURRENT, pen);
    }

    /** Differences of published limits: ISO 965-2:1998 for M8 6H/6g; handbook table of UNC for 1/4-20. */
    @ParameterizedTest
    @CsvSource({"M8x1.25, 0.028, 0.306", "M8x1.25-6H, 0.028, 0.306", "M8x1.25-6g, 0.028, 0.306"})
    void clearancesAreDifferencesOfTheLimits(String callOut, double least, double greatest) {
        Fit fit = fit(callOut, Pen.NONE).orElseThrow();
        assertThat(fit.least().mm()).isCloseTo(least, within(1e-9));
        assertThat(fit.greatest().mm()).isCloseTo(greatest, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1/4-20 UNC, 0.0011, 0.0097", "1/4-20 UNC-3B, 0.0011, 0.0084", "1/4-20 UNC-3A, 0, 0.0077"})
    void inchClearancesAreDifferencesOfTheLimits(String callOut, double least, double greatest) {
        Fit fit = fit(callOut, Pen.NONE).orElseThrow();
        assertThat(fit.least().inch()).isCloseTo(least, within(1e-9));
        assertThat(fit.greatest().inch()).isCloseTo(greatest, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "M8x1.25-6H, EXTERNAL, 6g",
        "1/4-20 UNC-2A, INTERNAL, 2B",
        "Tr20x4-8e, INTERNAL, 7H",
        "1/4-20 BSW-close, INTERNAL, medium",
        "6 BA-close, INTERNAL, normal",
        "G 1/2 B, INTERNAL, G"
    })
    void theSideNotNamedIsTakenInItsUsualClass(String callOut, Side side, String className) {
        Fit fit = fit(callOut, Pen.NONE).orElseThrow();
        assertThat(fit.usual()).isEqualTo(side);
        SideLimits taken = side == Side.INTERNAL ? fit.internal() : fit.external();
        assertThat(taken.className()).isEqualTo(className);
    }

    @Test
    void aTaperThreadAndAnInsertHoleHaveNoFitOfThisKind() {
        assertThat(fit("1/2-14 NPT", Pen.NONE)).isEmpty();
        assertThat(fit("STI M8", Pen.NONE)).isEmpty();
        assertThat(fit("Rp 1/2", Pen.NONE)).isEmpty();
    }

    /** In the usual classes no pair of any size is tight, and every pair has room for both tolerances. */
    @Test
    void noUsualPairIsTight() {
        List<String> wrong = new ArrayList<>();
        for (CallOut callOut : StandardThreads.all()) {
            Fit.of(callOut, MinorRounding.CURRENT, Pen.NONE)
                    .filter(fit -> fit.least().mm() < -1e-9
                            || fit.greatest().mm() <= fit.least().mm())
                    .ifPresent(fit -> wrong.add(callOut.normal()));
        }
        assertThat(wrong).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"M8x1.25", "M8x1.25-6H", "1/4-20 UNC-2A", "1/2-10 ACME", "2 BA", "G 1/2", "Tr20x4-7e"})
    void theWorkingGivesTheClearances(String callOut) {
        WorkingCheck.everyFormulaGivesItsFigure(
                LimitsOfSize.worked(CallOuts.read(callOut).orThrow(), MinorRounding.CURRENT)
                        .steps());
        Worked<LimitsOfSize> worked = LimitsOfSize.worked(CallOuts.read(callOut).orThrow(), MinorRounding.CURRENT);
        assertThat(worked.steps()).extracting(step -> step.rule().symbol()).contains("c_min", "c_max");
    }
}
