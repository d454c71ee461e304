// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The oversize of a drilled hole")
class OversizeTest {
    @ParameterizedTest(name = "{0}: {2} in")
    @CsvFileSource(resources = "/reference/chart-oversize.csv")
    void agreesWithWhatTapDrillChartsReckonWith(String drills, double drill, double mean) {
        assertThat(Oversize.MEAN.inches(Length.ofInch(drill))).isCloseTo(mean, within(0.0003));
    }

    @Test
    void leastMeanAndGreatestNeverCross() {
        for (double inch = 0.01; inch < 1.5; inch += 0.003) {
            Length drill = Length.ofInch(inch);
            assertThat(Oversize.LEAST.inches(drill)).isLessThanOrEqualTo(Oversize.MEAN.inches(drill));
            assertThat(Oversize.MEAN.inches(drill)).isLessThanOrEqualTo(Oversize.GREATEST.inches(drill));
        }
    }

    @Test
    void aThickerDrillNeverCutsCloser() {
        double before = 0;
        for (double inch = 0.01; inch < 1.5; inch += 0.003) {
            double here = Oversize.MEAN.inches(Length.ofInch(inch));
            assertThat(here).isGreaterThanOrEqualTo(before - 1e-15);
            before = here;
        }
    }

    @Test
    void outsideTheTableItsEndRowsStayAndSayTheyDoNotCover() {
        assertThat(Oversize.MEAN.inches(Length.ofInch(0.03))).isEqualTo(0.0015);
        assertThat(Oversize.MEAN.inches(Length.ofInch(2))).isCloseTo(0.0070, within(1e-12));
        assertThat(Oversize.covers(Length.ofInch(0.03))).isFalse();
        assertThat(Oversize.covers(Length.ofInch(0.0625))).isTrue();
        assertThat(Oversize.covers(Length.ofInch(1.01))).isFalse();
    }
}
