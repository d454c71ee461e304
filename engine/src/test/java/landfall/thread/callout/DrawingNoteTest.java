// SPDX-License-Identifier: Apache-2.0
package landfall.thread.callout;

import static org.assertj.core.api.Assertions.assertThat;

import landfall.fault.Caution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Call-outs with what drawings write around them, and old forms: read as the thread they mean, and said so. */
class DrawingNoteTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "4X M8x1.25-6H                     | M8x1.25-6H       | 4X",
                "4 X M8                            | M8x1.25          | 4 X",
                "2X 1/4-20 UNC-2B THRU             | 1/4-20 UNC-2B    | 2X, THRU",
                "(4X) 1/4-20 UNC - 2B              | 1/4-20 UNC-2B    | 4X",
                "(4) 10-32 UNF-2B                  | 10-32 UNF-2B     | 4",
                "3X 2-56 UNC-2B                    | 2-56 UNC-2B      | 3X",
                "2X 1/2 NPT                        | 1/2-14 NPT       | 2X",
                "3 HOLES M6                        | M6x1             | 3 HOLES",
                "M10x1.5-6H TAPPED THRU            | M10x1.5-6H       | TAPPED THRU",
                "TAPPED HOLE M10                   | M10x1.5          | TAPPED HOLE",
                "DRILL & TAP 1/4-20                | 1/4-20 UNC       | DRILL & TAP",
                "1/4-20 UNC-2B X .50 DEEP          | 1/4-20 UNC-2B    | .50 DEEP",
                "1/4-20 UNC-2B \u21a7 .50          | 1/4-20 UNC-2B    | \u21a7 .50",
                "M4x0.7 6H 10 DEEP                 | M4x0.7-6H        | 10 DEEP",
                "M8x1.25-6H - 20 DEEP              | M8x1.25-6H       | 20 DEEP",
                "M8 x 20 DEEP                      | M8x1.25          | 20 DEEP",
                "M8 x 1 DEEP 20                    | M8x1             | DEEP 20",
                "M8 x 1 HOLES                      | M8x1             | HOLES",
                "M8 x 1.25 x 20                    | M8x1.25          | 20",
                "M10 x 1.5 - 6g x 50 LG            | M10x1.5-6g       | 50 LG",
                "1/4-20 TAP                        | 1/4-20 UNC       | TAP",
                "10-32 X .375 DP                   | 10-32 UNF        | .375 DP",
                "1/4-20 UNC-2B, 4 PLACES EQ SP ON 3.00 BC | 1/4-20 UNC-2B | 4 PLACES EQ SP ON 3.00 BC",
                "1/2 - 13UNC - 2B x .75 FULL THD   | 1/2-13 UNC-2B    | .75 FULL THD",
                "3X \u00d85 THRU M6                | M6x1             | 3X, \u00d85 THRU",
                "4X M6x1 - 6H \u21a7 12 / \u00d85 \u21a7 16 | M6x1-6H | 4X, \u21a7 12 / \u00d85 \u21a7 16",
                "ISO metric M8                     | M8x1.25          | ISO metric",
                "M8 COARSE                         | M8x1.25          | COARSE",
            })
    void whatIsNoPartOfTheThreadIsSetAsideAndSaid(String typed, String normal, String aside) {
        Heard heard = CallOuts.hear(typed).orThrow();
        assertThat(heard.callOut().normal()).isEqualTo(normal);
        assertThat(heard.assumed()).last().satisfies(caution -> {
            assertThat(caution.code()).isEqualTo("setAside");
            assertThat(caution.raisedBy()).isEqualTo(aside);
        });
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1/4-20 NC-2              | 1/4-20 UNC-2A/2B       | oldSeries, classLetterAssumed",
                "10-32 NF-3               | 10-32 UNF-3A/3B        | oldSeries, classLetterAssumed",
                "1/4-32 NEF-2             | 1/4-32 UNEF-2A/2B      | oldSeries, classLetterAssumed",
                "12-24 N.C.               | 12-24 UNC              | oldSeries",
                "1/4-20 NC-2B             | 1/4-20 UNC-2B          | oldSeries",
                "1/4-20 UNC-2             | 1/4-20 UNC-2A/2B       | classLetterAssumed",
                "1/4-20 UN-2A             | 1/4-20 UNC-2A          | seriesAssumed",
                "1/4-24 UN-2B             | 1/4-24 UNS-2B          | seriesAssumed",
                "1.000-8UN-2A             | 1-8 UNC-2A             | seriesAssumed",
                "2-8 UN-2B                | 2-8 UN-2B              | ''",
                "1/2 BSPP                 | G 1/2                  | bsppIsG",
                "BSPP 3/4 A               | G 3/4 A                | bsppIsG",
                "1/2-20 UNF-2B L.H.       | 1/2-20 UNF-2B-LH       | ''",
                "1/2-20 UNF-2B L H        | 1/2-20 UNF-2B-LH       | ''",
                "M20 x L4-P2-6H (TWO STARTS) | M20xPh4P2-6H        | ''",
                "M8x1.25 STI              | STI M8x1.25            | ''",
                "1/4-20 UNC-2B STI        | STI 1/4-20 UNC-2B      | ''",
                "M8 (EG)                  | STI M8x1.25            | ''",
                "ACME 1 1/2-4-2G          | 1 1/2-4 ACME-2G        | ''",
                "1/4\"-20 WHITWORTH       | 1/4-20 Whit            | ''",
                "M8x1 FINE                | M8x1                   | ''",
            })
    void oldAndLooseFormsAreReadAndWhatIsAssumedIsSaid(String typed, String normal, String codes) {
        Heard heard = CallOuts.hear(typed).orThrow();
        assertThat(heard.callOut().normal()).isEqualTo(normal);
        assertThat(String.join(", ", heard.assumed().stream().map(Caution::code).toList()))
                .isEqualTo(codes);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "foo | thread: \"foo\" has \"foo\" at character 1, where a thread, as in M8, 1/4-20 UNC, 1/2-14 NPT, G 1/2,"
                        + " Tr40x7, STI M6x1 was expected. To mend: write it as M8x1.25-6H or 1/4-20 UNC-2B.",
                "M8 FINE | thread: \"M8 FINE\" says FINE at character 4 but gives no fine pitch. To mend: write M8x1 or"
                        + " M8x0.75.",
                "M20x2 (TWO STARTS) | thread: \"M20x2 (TWO STARTS)\" says 2 starts at character 8, but its pitch and lead"
                        + " say 1. To mend: write M20xPh4P2.",
                "M20x2 3 starts | thread: \"M20x2 3 starts\" says 3 starts at character 7, but its pitch and lead say 1."
                        + " To mend: write M20xPh6P2.",
                "M8x1.25-6HX | thread: \"M8x1.25-6HX\" has a tap maker's mark at character 9, which is no class of a"
                        + " thread. To mend: write 6H; the X belongs to the tap, whose own limits must be taken from it.",
                "1/2-10 ACME-2C | thread: \"1/2-10 ACME-2C\" asks for a centralizing class at character 13, whose limits"
                        + " are not held. To mend: take them from the drawing or the standard; a general purpose thread is"
                        + " 2G, 3G or 4G.",
                "1/8 PT | thread: \"1/8 PT\" has PT at character 5, which names more than one thread. To mend: write Rc 1/8"
                        + " for a hole, R 1/8 for a pipe end, Rp 1/8 for a parallel hole that seals on the thread.",
                "1/4 WHIT | thread: \"1/4 WHIT\" names a size that WHIT does not have. To mend: write 1/4-20 BSW, or give"
                        + " the threads per inch.",
                "4X M8x1.25-6Z | thread: \"4X M8x1.25-6Z\" has \"Z\" at character 13, where a position: e f g h outside,"
                        + " G H inside was expected. To mend: write M8x1.25-6H or M8x1.25-6g.",
                "M8 x 1 OR 1/4-20 | thread: \"M8 x 1 OR 1/4-20\" has \"OR\" at character 8, where a class such as 6H or 6g,"
                        + " S, L, a length of engagement, LH, or the end was expected. To mend: write M8x1-6H or M8x1-6g.",
            })
    void whatStaysUnreadIsRefusedAtItsPlaceInTheTypedText(String typed, String sentence) {
        assertThat(CallOuts.read(typed).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.sentence()).isEqualTo(sentence));
    }

    @Test
    void aNumberIsNeverTakenFromTheThreadItself() {
        assertThat(CallOuts.read("1/4-20 THRU").orThrow().normal()).isEqualTo("1/4-20 UNC");
        assertThat(CallOuts.read("M8x1 THRU").orThrow().normal()).isEqualTo("M8x1");
        assertThat(CallOuts.read("10-32 DEEP .5").orThrow().normal()).isEqualTo("10-32 UNF");
        assertThat(CallOuts.read("1-8 TAP").orThrow().normal()).isEqualTo("1-8 UNC");
    }
}
