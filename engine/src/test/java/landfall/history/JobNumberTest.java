// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JobNumberTest {
    @Test
    void aNumberReadsBackInSmallLettersAndWithBlanks() {
        for (long number : new long[] {1, 7, 42, 9999, 10_000, 123_456_789_012L}) {
            JobNumber job = JobNumber.numbered(number);
            assertThat(JobNumber.read("  " + job.text().toLowerCase(java.util.Locale.ROOT) + " ")
                            .orThrow())
                    .isEqualTo(job);
        }
    }

    @Test
    void everyWrongFigureAndEverySwapOfNeighboursIsTold() {
        String right = JobNumber.numbered(4711).text();
        for (int at = 1; at < 5; at++) {
            for (char other = '0'; other <= '9'; other++) {
                String wrong = right.substring(0, at) + other + right.substring(at + 1);
                if (!wrong.equals(right)) {
                    assertThat(JobNumber.read(wrong).findings()).as(wrong).hasSize(1);
                }
            }
        }
        assertThat(JobNumber.read("J7411" + right.substring(5)).findings()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "J7", "T0001-W", "J0001", "j0001-", "J00O1-A"})
    void whatIsNoNumberIsRefusedWithTheMend(String typed) {
        assertThat(JobNumber.read(typed).findings().get(0).mend())
                .isEqualTo("write it as it stands on the card, such as "
                        + JobNumber.numbered(7).text());
    }

    @Test
    void aWrongCheckCharacterNamesTheRightOne() {
        String right = JobNumber.numbered(7).text();
        char wrong = right.endsWith("A") ? 'B' : 'A';
        assertThat(JobNumber.read("J0007-" + wrong).findings().get(0).sentence())
                .isEqualTo("number: \"J0007-" + wrong + "\" has a check character that does not agree with its number."
                        + " To mend: read the card again: J0007 ends in " + right.substring(5) + ".");
    }
}
