// SPDX-License-Identifier: Apache-2.0
package landfall.thread.callout;

import static org.assertj.core.api.Assertions.assertThat;

import landfall.fault.Answer;
import landfall.thread.CallOut;
import landfall.thread.Hand;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people type, and how it is read. */
class CallOutsTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1/4-20                          | 1/4-20 UNC",
                "1/4\"-20 UNC 2B                 | 1/4-20 UNC-2B",
                "1/4-20unc2b                     | 1/4-20 UNC-2B",
                "1/4 - 20 UNC - 2B               | 1/4-20 UNC-2B",
                "1/4 x 20                        | 1/4-20 UNC",
                "1/4–20 UNC–2B                   | 1/4-20 UNC-2B",
                "¼-20 UNC-2B                     | 1/4-20 UNC-2B",
                ".250-20                         | 1/4-20 UNC",
                ".500-13                         | 1/2-13 UNC",
                "0.2969-36 UNS-2A                | 19/64-36 UNS-2A",
                "#10-32                          | 10-32 UNF",
                "No. 10-32 UNF                   | 10-32 UNF",
                "10 (0.190)-32 UNF-2B            | 10-32 UNF-2B",
                "0.1900-32 UNF                   | 10-32 UNF",
                "10-32 UNF-2B-LH                 | 10-32 UNF-2B-LH",
                "10-32 UNF-2B LH                 | 10-32 UNF-2B-LH",
                "1 1/8-7 UNC-2A                  | 1 1/8-7 UNC-2A",
                "1-1/8-7 UNC-2A                  | 1 1/8-7 UNC-2A",
                "1⅛-7                            | 1 1/8-7 UNC",
                "1-8                             | 1-8 UNC",
                "1-64                            | 1-64 UNC",
                "1 in-32                         | 1-32 UN",
                "2-4 1/2 UNC                     | 2-4.5 UNC",
                "2-12 UN-2B                      | 2-12 UN-2B",
                "1 1/4-8UN-2B                    | 1 1/4-8 UN-2B",
                "1/2-13 UNRC-2A                  | 1/2-13 UNRC-2A",
                "3/8-16 NC-2B                    | 3/8-16 UNC-2B",
                "1/2-13 UNC-2A/2B                | 1/2-13 UNC-2A/2B",
                "1/2-13 UNC-2B/3A                | 1/2-13 UNC-3A/2B",
                "1/4-24                          | 1/4-24 UNS",
                "UNC 1/4-20 2B                   | 1/4-20 UNC-2B",
                "UNRF #10-32-3A-LH               | 10-32 UNRF-3A-LH",
                "1/4-20 UNC-2B (21)              | 1/4-20 UNC-2B (21)",
                "1/4-24 UNS-2A LE=1.00           | 1/4-24 UNS-2A LE 1",
                "0.2500-0.05P-0.1L UNS-2A        | 0.2500-0.05P-0.1L UNS-2A",
                "3/4-0.0625P-0.1875L-UNS-2A (3 STARTS) | 0.7500-0.0625P-0.1875L UNS-2A",
                "3/4-16 UNF-2A, 3 START, 0.1875 L | 0.7500-0.0625P-0.1875L UNF-2A",
                "0.750-0.0833P-0.1667L           | 0.7500-0.08333333P-0.16666666L UNS",
                "M8                              | M8x1.25",
                "m8                              | M8x1.25",
                "m8 x 1.25 - 6h                  | M8x1.25-6h",
                "M8×1.25-6H                      | M8x1.25-6H",
                "M8X1,25-6H                      | M8x1.25-6H",
                "M 8 x 1                         | M8x1",
                "M8-6g                           | M8x1.25-6g",
                "M6-5H6H                         | M6x1-5H6H",
                "M20x2-6H/5g6g                   | M20x2-6H/5g6g",
                "M20x2-5g6g/6H                   | M20x2-6H/5g6g",
                "M16x1 LH-6G                     | M16x1-6G-LH",
                "M16xPh3P1.5-6H                  | M16xPh3P1.5-6H",
                "M16xPh3P1.5-6H-L-LH             | M16xPh3P1.5-6H-L-LH",
                "M16xPh3P1.5 (two starts)-6H     | M16xPh3P1.5-6H",
                "M16x3(P1.5)-6H                  | M16xPh3P1.5-6H",
                "M8-N                            | M8x1.25",
                "M10x1.5-6H-30                   | M10x1.5-6H-30",
                "M10x1.3                         | M10x1.3",
                "MJ6                             | MJ6x1",
                "MJ6x1-4H5H                      | MJ6x1-4H5H",
                "1/4-28 UNJF-3A                  | 1/4-28 UNJF-3A",
                "1/2 NPT                         | 1/2-14 NPT",
                "1/2-14 npt                      | 1/2-14 NPT",
                "NPT 1/2                         | 1/2-14 NPT",
                "1-1/4 NPT                       | 1 1/4-11.5 NPT",
                "1 1/4-11 1/2 NPTF-2-LH          | 1 1/4-11.5 NPTF-2-LH",
                "G1/2                            | G 1/2",
                "g 1 1/4 a                       | G 1 1/4 A",
                "G 3/4-14 B-LH                   | G 3/4 B-LH",
                "R 1/2                           | R 1/2",
                "Rc1/2                           | Rc 1/2",
                "rp 3/8-LH                       | Rp 3/8-LH",
                "1/4 BSW                         | 1/4-20 BSW",
                "BSF 1/4                         | 1/4-26 BSF",
                "1/2-12 BSW close                | 1/2-12 BSW-close",
                "1/2-20 Whit                     | 1/2-20 Whit",
                "2 BA                            | 2 BA",
                "2BA                             | 2 BA",
                "BA 6-close-LH                   | 6 BA-close-LH",
                "1/2-10 Acme 2G                  | 1/2-10 ACME-2G",
                "1 3/4-4 ACME-2G-LH              | 1 3/4-4 ACME-2G-LH",
                "1-0.2P-0.4L ACME-3G             | 1.0000-0.2P-0.4L ACME-3G",
                "1-5 ACME, 2 STARTS              | 1.0000-0.2P-0.4L ACME",
                "1/2-10 stub acme                | 1/2-10 STUB ACME",
                "Tr40x7                          | Tr40x7",
                "tr 40 x 7 - 7e                  | Tr40x7-7e",
                "Tr40x14(P7)LH-7H                | Tr40x14(P7)-7H-LH",
                "Tr40x14P7-7H/8e                 | Tr40x14(P7)-7H/8e",
                "STI M6                          | STI M6x1",
                "EG M6                           | STI M6x1",
                "STI 1/4-20                      | STI 1/4-20 UNC",
            })
    void readsWhatPeopleType(String typed, String normal) {
        assertThat(CallOuts.read(typed).orThrow().normal()).isEqualTo(normal);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1/4-20 UNX-2B | thread: \"1/4-20 UNX-2B\" has \"UNX\" at character 8, where a series (UNC,"
                        + " UNF, UNEF, UN, UNS) "
                        + "or a class such as 2B was expected. To mend: write 1/4-20 UNC or 1/4-28 UNF or"
                        + " 1/4-32 UNEF, with a class such as 2B if one is meant.",
                "1/4-20 UNF | thread: \"1/4-20 UNF\" says UNF at character 8, but 1/4-20 is UNC. "
                        + "To mend: write 1/4-20 UNC or 1/4-28 UNF.",
                "1/4-22 UNC | thread: \"1/4-22 UNC\" says UNC at character 8, but 1/4-22 is in no standard series. "
                        + "To mend: write 1/4-22 UNS or 1/4-20 UNC.",
                "1/4-20 UNC-4B | thread: \"1/4-20 UNC-4B\" has \"4B\" at character 12, where a class: 1A, 2A,"
                        + " 3A outside, "
                        + "1B, 2B, 3B inside was expected. To mend: write 1/4-20 UNC or 1/4-28 UNF or 1/4-32"
                        + " UNEF, with a class such as 2B if one is meant.",
                "3/8 | thread: \"3/8\" has nothing at character 4, where a dash and the threads per inch, as in"
                        + " 1/4-20 was "
                        + "expected. To mend: write 3/8-16 UNC or 3/8-24 UNF or 3/8-32 UNEF, with a class such"
                        + " as 2B if one is meant.",
                "UNF 1/4-20 | thread: \"UNF 1/4-20\" says UNF at character 1, but 1/4-20 is UNC. "
                        + "To mend: write 1/4-20 UNC or 1/4-28 UNF.",
                "1/3-20 | thread: \"1/3-20\" has a fraction at character 1 that is not in halves, quarters, "
                        + ".. 128ths. "
                        + "To mend: write it as a decimal.",
                "M13 | thread: \"M13\" has no pitch, and M13 has no coarse one. "
                        + "To mend: give the pitch, or take one of M12x1.75, M12x1.5, M12x1.25, M12x1.",
                "M8x9 | thread: \"M8x9\" has a pitch at character 4 that is not from 0.2 to 8 mm and under"
                        + " three quarters of "
                        + "the diameter. To mend: write one of M8x1.25, M8x1, M8x0.75.",
                "M8-7g | thread: \"M8-7g\" has a class at character 4 that asks for grade 7 on the major"
                        + " diameter, which has 4, "
                        + "6 and 8. To mend: write 7g6g.",
                "M8-6K | thread: \"M8-6K\" has \"K\" at character 5, where a position: e f g h outside, G H"
                        + " inside was expected."
                        + " To mend: write M8x1.25-6H or M8x1.25-6g.",
                "M8-9H | thread: \"M8-9H\" has a class at character 4 that has a grade that internal threads do"
                        + " not have (4 to 8)."
                        + " To mend: take 5H, 6H or 7H.",
                "M16xPh3.2P1.5 | thread: \"M16xPh3.2P1.5\" has a lead at character 7 that is not 1 to 20 whole"
                        + " pitches. "
                        + "To mend: lead = starts x pitch, as in M16xPh3P1.5.",
                "W8 | thread: \"W8\" has \"W8\" at character 1, where a thread, as in M8, 1/4-20 UNC, "
                        + "1/2-14 NPT, G 1/2, Tr40x7, "
                        + "STI M6x1 was expected. To mend: write 8 BA or M8x1 or G 1/8.",
                "1/2 BSP | thread: \"1/2 BSP\" has BSP at character 5, which names more than one thread. "
                        + "To mend: write G 1/2 for the parallel thread (BSPP), Rc 1/2 for a hole, R 1/2 for a pipe end, Rp 1/2 for a"
                        + " parallel hole that seals on the thread.",
                "5/8 NPT | thread: \"5/8 NPT\" has a size that pipe threads do not have. "
                        + "To mend: sizes run 1/16, 1/8, 1/4, 3/8, 1/2, 3/4, 1, 1 1/4 .. 6.",
                "1/2-18 NPT | thread: \"1/2-18 NPT\" has threads an inch that this pipe size does not have. "
                        + "To mend: write 1/2-14 NPT.",
                "Tr7x40 | thread: \"Tr7x40\" is outside trapezoidal threads: 6 to 355 mm, pitch 1.5 to 44 "
                        + "mm and under 3/4 of "
                        + "the diameter. To mend: check that diameter and pitch were not swapped.",
                "17 BA | thread: \"17 BA\" has a BA number over 16. To mend: BA runs from 0 to 16.",
            })
    void whatIsWrongIsRefusedWithThePlaceAndTheMend(String typed, String sentence) {
        Answer<CallOut> answer = CallOuts.read(typed);
        assertThat(answer.findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.sentence()).isEqualTo(sentence));
    }

    @Test
    void nothingIsRefused() {
        assertThat(CallOuts.read("  ").findings().get(0).why()).isEqualTo("is empty");
    }

    @Test
    void handPitchAndStartsAreThoseOfTheText() {
        CallOut callOut = CallOuts.read("M16xPh3P1.5-6H-LH").orThrow();
        assertThat(callOut.thread().hand()).isEqualTo(Hand.LEFT);
        assertThat(callOut.thread().lead().starts()).isEqualTo(2);
        assertThat(callOut.thread().pitch().mm()).isEqualTo(1.5);
        assertThat(callOut.thread().lead().perTurn().mm()).isEqualTo(3);
        assertThat(callOut.classes()).containsExactly("6H");
        assertThat(CallOuts.read("1/2-13").orThrow().thread().pitch().mm()).isEqualTo(25.4 / 13);
    }
}
