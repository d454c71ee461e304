// SPDX-License-Identifier: Apache-2.0
package landfall.thread.whitworth;

import static landfall.thread.ReferenceRows.inch;
import static landfall.thread.ReferenceRows.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import landfall.thread.Answers;
import landfall.thread.ReferenceRows;
import landfall.thread.SideLimits;
import landfall.thread.callout.CallOuts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whitworth and BA threads against published rows, and what holds for all of them. */
class WhitworthTest {
    static List<String> everyCallOut() {
        return WhitworthReader.callOuts();
    }

    @Test
    void whitworthSizesAgreeWithThePublishedRows() {
        for (Map<String, String> row : ReferenceRows.of("whitworth.csv")) {
            var thread = CallOuts.read(row.get("callout")).orThrow().thread();
            double half = 0.0001001;
            assertThat(thread.pitchDiameter().inch())
                    .as(row.get("callout"))
                    .isCloseTo(Double.parseDouble(row.get("effective")), within(half));
            assertThat(thread.minorDiameter().inch()).isCloseTo(Double.parseDouble(row.get("core")), within(half));
            assertThat(thread.major().minus(thread.minorDiameter()).inch() / 2)
                    .isCloseTo(Double.parseDouble(row.get("depth")), within(half));
        }
    }

    @Test
    void baSizesAgreeWithThePublishedRows() {
        for (Map<String, String> row : ReferenceRows.of("ba.csv")) {
            SideLimits hole = Answers.inside(row.get("callout"));
            assertThat(mm(hole.pitch().min())).isEqualTo(Double.parseDouble(row.get("effective")), within(1e-9));
            assertThat(mm(hole.minor().min())).isEqualTo(Double.parseDouble(row.get("minor")), within(1e-9));
            if (!row.get("minor_max").isEmpty()) {
                assertThat(mm(hole.minor().max())).isCloseTo(Double.parseDouble(row.get("minor_max")), within(0.00101));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("everyCallOut")
    void everyPrintedFormulaGivesItsFigureAndTheSidesFit(String callOut) {
        Answers.workingHolds(callOut);
        Answers.workingHolds(callOut + "-close");
        SideLimits inside = Answers.inside(callOut);
        SideLimits outside = Answers.outside(callOut);
        assertThat(mm(outside.pitch().max())).isEqualTo(mm(inside.pitch().min()), within(1e-9));
        assertThat(mm(outside.pitch().min())).isLessThan(mm(outside.pitch().max()));
        assertThat(mm(inside.minor().max())).isLessThan(mm(outside.major().min()));
        assertThat(mm(Answers.outside(callOut + "-close").pitch().min()))
                .isGreaterThan(mm(outside.pitch().min()));
        assertThat(CallOuts.read(callOut).orThrow().normal()).isEqualTo(callOut);
        assertThat(Answers.to(callOut + "-LH").internal())
                .isEqualTo(Answers.to(callOut).internal());
    }

    @Test
    void closeIsAClassOfScrewsAndNormalOfHoles() {
        assertThat(Answers.to("1/4 BSW-close").internal()).isEmpty();
        assertThat(Answers.to("1/4 BSW-normal").external()).isEmpty();
        assertThat(Answers.to("1/4 BSW-medium").internal()).isPresent();
        assertThat(Answers.to("1/4 BSW-medium").external()).isPresent();
        // by hand: 0.002 x 0.62996 + 0.003 x 0.5 + 0.005 x 0.22361 = 0.0038780; 0.2180 + 0.0039 = 0.2219
        assertThat(inch(Answers.inside("1/4 BSW").pitch().max())).isEqualTo(0.2219, within(1e-9));
    }
}
