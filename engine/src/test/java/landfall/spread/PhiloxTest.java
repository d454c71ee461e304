// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.special.Erf;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Draws and the normal curve")
class PhiloxTest {
    /** The generator's published known answers (salmon-2011): counter, key, answer. */
    @ParameterizedTest
    @CsvSource({
        "00000000 00000000 00000000 00000000, 00000000 00000000, 6627e8d5 e169c58d bc57ac4c 9b00dbd8",
        "ffffffff ffffffff ffffffff ffffffff, ffffffff ffffffff, 408f276d 41c83b0e a20bc7c6 6d5451fd",
        "243f6a88 85a308d3 13198a2e 03707344, a4093822 299f31d0, d16cfe09 94fdcceb 5001e420 24126ea1"
    })
    void givesThePublishedAnswers(String counter, String key, String answer) {
        int[] c = words(counter);
        int[] wanted = words(answer);
        long both = pair(words(key), 0);
        assertThat(Philox.half(pair(c, 0), pair(c, 2), both, true)).isEqualTo(pair(wanted, 0));
        assertThat(Philox.half(pair(c, 0), pair(c, 2), both, false)).isEqualTo(pair(wanted, 2));
    }

    private static long pair(int[] words, int first) {
        return (words[first] & 0xFFFFFFFFL) | (long) words[first + 1] << 32;
    }

    private static int[] words(String text) {
        return java.util.Arrays.stream(text.split(" "))
                .mapToInt(word -> (int) Long.parseLong(word, 16))
                .toArray();
    }

    /** The normal distribution's share below x is erfc(-x/√2)/2; its inverse must undo it. */
    @ParameterizedTest
    @ValueSource(doubles = {-8, -6.5, -5.2, -3, -1.4, -0.67, -0.1, 0, 0.3, 0.7, 1.959963984540054, 3.3, 5.1})
    void theQuantileUndoesTheNormalCurve(double x) {
        double share = Erf.erfc(-x / Math.sqrt(2)) / 2;
        assertThat(NormalCurve.quantile(share)).isCloseTo(x, within(1e-13 + 3e-16 / Math.exp(-x * x / 2)));
    }

    @Test
    void aDrawDependsOnSeedInputAndNumberAndOnNothingElse() {
        Draws draws = new Draws(7);
        assertThat(new Draws(7).uniform(2, 123_456_789_012L)).isEqualTo(draws.uniform(2, 123_456_789_012L));
        assertThat(new Draws(8).uniform(2, 5)).isNotEqualTo(draws.uniform(2, 5));
        assertThat(draws.uniform(1, 5)).isNotEqualTo(draws.uniform(2, 5));
        assertThat(draws.uniform(2, 6)).isNotEqualTo(draws.uniform(2, 5));
        assertThat(draws.second(2, 5)).isNotEqualTo(draws.uniform(2, 5));
        assertThat(draws.uniform(0, 1L << 33)).isNotEqualTo(draws.uniform(0, 0));
    }
}
