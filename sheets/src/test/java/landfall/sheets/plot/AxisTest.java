// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import landfall.sheets.draw.Spot;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Axes of a curve")
class AxisTest {
    @Test
    void ticksStandAtRoundSteps() {
        assertThat(Axis.around(0, 8.2, 3).ticks()).containsExactly(0.0, 5.0, 10.0);
        assertThat(Axis.around(52, 79, 6).ticks()).containsExactly(50.0, 55.0, 60.0, 65.0, 70.0, 75.0, 80.0);
        Axis hundredths = Axis.around(0, 0.061, 4);
        assertThat(hundredths.words(hundredths.ticks().get(1))).isEqualTo("0.02");
    }

    @Test
    void anAxisHoldsWhatItWasMadeFor() {
        Random random = new Random(4);
        for (int i = 0; i < 500; i++) {
            double most = Math.pow(10, 4 * random.nextDouble() - 2);
            double least = most * random.nextDouble() * 0.9;
            Axis axis = Axis.around(least, most, 1 + random.nextInt(8));
            assertThat(axis.from()).isLessThanOrEqualTo(least + 1e-9 * most);
            assertThat(axis.to()).isGreaterThanOrEqualTo(most * (1 - 1e-9));
            assertThat(axis.ticks()).hasSizeGreaterThanOrEqualTo(2);
        }
    }

    @Test
    void valuesStandInProportionInTheFrame() {
        Plot plot = new Plot(Spot.at(10, 20), Spot.at(60, 30), new Axis(0, 6, 1), new Axis(-1, 2, 1));
        assertThat(plot.at(0, -1)).isEqualTo(Spot.at(10, 50));
        assertThat(plot.at(6, 2)).isEqualTo(Spot.at(70, 20));
        assertThat(plot.at(3, 0.5).y()).isCloseTo(35, within(1e-12));
    }

    @Test
    void anAxisOfNoLengthIsAFault() {
        assertThatThrownBy(() -> new Axis(3, 3, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an axis from 3.0 to 3.0 by 1.0");
    }
}
