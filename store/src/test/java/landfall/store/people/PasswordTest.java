// SPDX-License-Identifier: Apache-2.0
package landfall.store.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import landfall.fault.Answer;
import landfall.fault.Finding;
import org.junit.jupiter.api.Test;

class PasswordTest {
    private static final PersonName IDA = new PersonName("ida");

    @Test
    void aShortPasswordIsRefusedAndNotShown() {
        List<Finding> findings = Password.chosen("password", "taps1234", IDA).findings();
        assertThat(findings.get(0).sentence())
                .isEqualTo(
                        "password: \"\" has 8 characters, which are soon guessed. To mend: take at least 15 characters:"
                                + " four words that have nothing to do with another.");
        assertThat(findings.toString()).doesNotContain("taps1234");
    }

    @Test
    void onesThatAreLongAndYetNothingAreRefused() {
        for (String bad : List.of(
                "aaaaaaaaaaaaaaaaaaaa",
                "ababababababababab",
                "ida ida ida ida",
                "landfallLandfall1",
                "x".repeat(201))) {
            assertThat(Password.chosen("password", bad, IDA).findings()).as(bad).hasSize(1);
        }
    }

    @Test
    void anyKeyboardTypesTheSame() {
        String composed = "caf\u00e9 under the crane";
        String apart = "cafe\u0301 under the crane";
        assertThat(Password.chosen("password", composed, IDA)).isEqualTo(Password.chosen("password", apart, IDA));
        assertThat(Password.typed(apart)).isEqualTo(Password.typed(composed));
    }

    @Test
    void aPasswordShowsItselfNowhere() {
        Answer<Password> answer = Password.chosen("password", "four plain words here", IDA);
        assertThat(answer.toString()).doesNotContain("four plain");
    }

    @Test
    void namesAreOneWhateverTheirCaseAndNothingElseIsAName() {
        assertThat(PersonName.read("name", " Ida.Marsh ").orThrow().text()).isEqualTo("ida.marsh");
        for (String bad : List.of("", "ida marsh", "<ida>", "ida\r\nSet-Cookie: x", "-ida", "x".repeat(41), "../ida")) {
            assertThat(PersonName.read("name", bad).findings()).as(bad).hasSize(1);
        }
    }
}
