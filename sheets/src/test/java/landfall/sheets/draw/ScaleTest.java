// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import landfall.quantity.Length;
import org.junit.jupiter.api.Test;

class ScaleTest {
    @Test
    void isTheLargestStepThatFits() {
        assertThat(Scale.fitting(Length.ofMm(4), 21).words()).isEqualTo("5 : 1");
        assertThat(Scale.fitting(Length.ofMm(1.7), 40).words()).isEqualTo("20 : 1");
        assertThat(Scale.fitting(Length.ofMm(18), 21).words()).isEqualTo("1 : 1");
        assertThat(Scale.fitting(Length.ofMm(50), 21).words()).isEqualTo("1 : 2.5");
    }

    @Test
    void neverOverflowsItsRoomAndNeverWastesHalfOfIt() {
        Random random = new Random(11);
        for (int i = 0; i < 500; i++) {
            Length real = Length.ofMm(0.02 + random.nextDouble() * 60);
            double paper = Scale.fitting(real, 40).paper(real);
            assertThat(paper).isLessThanOrEqualTo(40 * (1 + 1e-9)).isGreaterThan(26);
        }
    }

    @Test
    void paperOverScaleIsTheLengthAgain() {
        Scale scale = new Scale(20);
        assertThat(scale.paper(Length.ofInch(0.0209)) / scale.ratio() / 25.4).isCloseTo(0.0209, within(1e-12));
        assertThatThrownBy(() -> new Scale(0)).hasMessage("scale must be positive: 0.0");
    }
}
