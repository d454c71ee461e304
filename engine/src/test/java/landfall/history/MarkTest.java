// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import landfall.fault.Answer;
import org.junit.jupiter.api.Test;

class MarkTest {
    /** ISO 7064 MOD 37,36: the example that the global release identifier is explained by (from memory). */
    @Test
    void checkCharactersAreThoseOfIso7064() {
        assertThat(Mark.check("A12425GABC1234002")).isEqualTo('M');
    }

    @Test
    void numbersReadBack() {
        for (ItemKind kind : ItemKind.values()) {
            for (long number : new long[] {1, 42, 9999, 10_000, 123_456_789}) {
                Mark mark = Mark.numbered(kind, number);
                assertThat(Mark.read(mark.text().toLowerCase(Locale.ROOT))).isEqualTo(Answer.of(mark));
            }
        }
    }

    @Test
    void everySingleWrongFigureIsTold() {
        Random random = new Random(20261125);
        for (int i = 0; i < 5000; i++) {
            String right = Mark.numbered(ItemKind.TAP, 1 + random.nextInt(9999)).text();
            int at = 1 + random.nextInt(4);
            char other = (char) ('0' + random.nextInt(10));
            String wrong = right.substring(0, at) + other + right.substring(at + 1);
            assertThat(Mark.read(wrong).findings()).as(wrong).hasSize(wrong.equals(right) ? 0 : 1);
        }
    }

    /** The standard's promise for neighbours that changed places is nearly all. */
    @Test
    void neighboursThatChangedPlacesAreNearlyAllTold() {
        int swaps = 0;
        int missed = 0;
        for (int number = 1; number < 10_000; number++) {
            String right = Mark.numbered(ItemKind.TAP, number).text();
            for (int at = 1; at < 4; at++) {
                if (right.charAt(at) != right.charAt(at + 1)) {
                    swaps++;
                    String swapped =
                            right.substring(0, at) + right.charAt(at + 1) + right.charAt(at) + right.substring(at + 2);
                    missed += Mark.read(swapped).findings().isEmpty() ? 1 : 0;
                }
            }
        }
        assertThat((double) missed / swaps).isLessThan(0.01);
    }

    @Test
    void aWrongCheckCharacterIsRefusedWithTheRightOne() {
        String right = Mark.numbered(ItemKind.TAP, 42).text();
        String wrong = "T0042-" + (right.endsWith("Z") ? "A" : "Z");
        assertThat(Mark.read(wrong).findings().get(0).sentence())
                .isEqualTo("mark: \"" + wrong + "\" has a check character that does not agree with its number."
                        + " To mend: read the label again: T0042 ends in " + right.substring(5) + ".");
    }

    @Test
    void aShopsOwnMarksAreTakenAsTheyAre() {
        assertThat(Mark.read(" a-17.b ").orThrow().text()).isEqualTo("A-17.B");
        assertThat(Mark.read("two words").findings().get(0).why()).isEqualTo("is not a mark");
        assertThat(Mark.read("").findings()).hasSize(1);
        assertThat(Mark.read("../../etc/passwd").findings()).hasSize(1);
    }
}
