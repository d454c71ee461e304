// SPDX-License-Identifier: Apache-2.0
package landfall.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures worked by hand from the rules of arithmetic and from right triangles. */
class FormulaEvaluatorTest {
    private static final Map<String, Double> SYMBOLS = Map.of(
            "P",
            1.5,
            "d",
            10.0,
            "D1_min",
            8.376,
            "α",
            30.0,
            "d₂",
            9.026,
            "d2'",
            8.9,
            "pitch.min",
            7.2,
            "f′",
            2.0,
            "e",
            4.0);

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1 + 2 * 3 | 7",
                "(1 + 2) * 3 | 9",
                "7 - 2 - 1 | 4",
                "16 / 4 / 2 | 2",
                "2 ^ 3 ^ 2 | 512",
                "-2 ^ 2 | -4",
                "2 ^ -1 | 0.5",
                "3 * -2 | -6",
                ".5 * 4 | 2",
                "1.5e-3 * 2E3 | 3",
                "2 * e | 8",
                "2*pi | 6.283185307179586",
                "d - 1.25 * P | 8.125",
                "D1_min + d₂ + d2' + pitch.min + f′ | 35.502",
                "sin(α) | 0.5",
                "cos(60) | 0.5",
                "tan(45) | 1",
                "asin(0.5) + acos(0.5) + atan(1) | 135",
                "sqrt(9) + abs(-2) + floor(2.9) | 7",
                "min(3, 1, 2) + max(3, 1, 2) | 4",
                "if(P < 2, 10, 20) | 10",
                "if(P > 2, 10, 20) | 20",
                "if(P <= 1.5, 10, 20) + if(P >= 1.5, 1, 2) | 11",
                "round(0.15, 0.1) | 0.2",
                "round(2.34449, 0.001) | 2.344",
                "round(0.00015, 0.0001) | 0.0002",
                "roundeven(0.00165, 0.0001) | 0.0016",
                "roundeven(0.00175, 0.0001) | 0.0018",
            })
    void worksOutAsByHand(String formula, double expected) {
        assertThat(FormulaEvaluator.evaluate(formula, SYMBOLS::get)).isCloseTo(expected, within(1e-12));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "d - Q | formula 'd - Q' at place 5: no step before it has the symbol Q",
                "2 P | formula '2 P' at place 3: 'P' does not belong",
                "(d | formula '(d' at place 3: ')' is missing",
                "d + | formula 'd +' at place 4: it ends too soon",
                "d · P | formula 'd · P' at place 3: '·' does not belong",
                "1.2.3 | formula '1.2.3' at place 6: '1.2.3' is no number",
                "cot(d) | formula 'cot(d)' at place 1: function cot is not known",
                "sin(d, P) | formula 'sin(d, P)' at place 1: function sin takes 1, not 2",
                "if(d, P) | formula 'if(d, P)' at place 1: function if takes 3, not 2",
            })
    void whatCannotBeReadIsNamedWithItsPlace(String formula, String message) {
        assertThatThrownBy(() -> FormulaEvaluator.evaluate(formula, SYMBOLS::get))
                .isInstanceOf(FormulaEvaluator.Unreadable.class)
                .hasMessage(message);
    }
}
