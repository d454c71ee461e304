// SPDX-License-Identifier: Apache-2.0
package landfall.tap.mark;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import landfall.fault.Answer;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What is stamped on a shank")
class MarkingTest {
    private static Marking read(String text) {
        return MarkingReader.read(text).orThrow();
    }

    private static String kinds(Marking marking) {
        return String.join(
                " ",
                marking.fields().stream()
                        .map(field -> field.text().replace(' ', '_') + "=" + field.kind())
                        .toList());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1/4-20 UNC GH3 HSS       | 1/4-20 UNC    | H3   | 1/4-20_UNC=thread GH3=limit HSS=material",
                "3/8-16 NC LH HS G H3     | 3/8-16 UNC-LH | H3   | 3/8-16_NC=thread LH=hand HS=material G_H3=limit",
                "M10x1.5 D6               | M10x1.5       | D6   | M10x1.5=thread D6=limit",
                "M8 ISO2/6H               | M8x1.25       | ISO 2 | M8=thread ISO2/6H=limit",
                "M8 6H HSS-E DIN 371 TiN  | M8x1.25       | ISO 2 | M8=thread 6H=limit HSS-E=material DIN_371=blank"
                        + " TiN=coating",
                "M6 ISO 2 6H              | M6x1          | ISO 2 | M6=thread ISO_2=limit 6H=class",
                "1/2-13 NC CS             | 1/2-13 UNC    | ''   | 1/2-13_NC=thread CS=material",
                "1/2-13 CUT THREAD HS     | 1/2-13 UNC    | cut thread | 1/2-13=thread CUT_THREAD=make HS=material",
                "1/4-20 STI GH2 HSS       | STI 1/4-20 UNC | H2  | 1/4-20=thread STI=thread GH2=limit HSS=material",
                "7/16-14 NC HS G +.0017   | 7/16-14 UNC   | +.0017 | 7/16-14_NC=thread HS=material G=make +.0017=limit",
                "10-32 UNF H3 4FL PLUG    | 10-32 UNF     | H3   | 10-32_UNF=thread H3=limit 4FL=flutes PLUG=chamfer",
                "ACMETOOL 1/4-28 UNF GH4 HSS 3312 | 1/4-28 UNF | H4 | ACMETOOL=unknown 1/4-28_UNF=thread GH4=limit"
                        + " HSS=material 3312=unknown",
                "G 1/2 HSS                | G 1/2         | ''   | G_1/2=thread HSS=material",
                "1/2-14 NPT HSS           | 1/2-14 NPT    | ''   | 1/2-14_NPT=thread HSS=material",
                "1/4-20 UNC 2B HSS        | 1/4-20 UNC    | ''   | 1/4-20_UNC=thread 2B=class HSS=material",
                "M10x1 6HX                | M10x1         | ''   | M10x1=thread 6HX=limit",
            })
    void everyPartIsExplained(String text, String thread, String mark, String kinds) {
        Marking marking = read(text);
        assertThat(marking.callOut().normal()).isEqualTo(thread);
        assertThat(marking.mark().map(TapMark::words).orElse("")).isEqualTo(mark);
        assertThat(kinds(marking)).isEqualTo(kinds);
        assertThat(marking.fields())
                .allSatisfy(field -> assertThat(field.means()).isNotBlank());
    }

    @ParameterizedTest
    @CsvSource({
        "1/4-20 UNC GH3 HSS,1/4-20 UNC HSS G H3",
        "3/8-16 NC LH HS G H3,3/8-16 UNC LH HS G H3",
        "M10x1.5 D6 HSS,M10x1.5 HSS G D6",
        "HSS M8 ISO2/6H,M8x1.25 HSS ISO 2",
        "1/2-13 CUT THREAD HS,1/2-13 UNC HS CUT"
    })
    void itIsWrittenInTheOrderOfTheStandard(String text, String written) {
        Marking marking = read(text);
        assertThat(marking.written()).isEqualTo(written);
        Marking again = read(written);
        assertThat(again.written()).isEqualTo(written);
        assertThat(again.callOut()).isEqualTo(marking.callOut());
        assertThat(again.mark()).isEqualTo(marking.mark());
    }

    @Test
    void anXPositionFixesNothingAndIsSaid() {
        assertThat(read("M10x1 6HX").cautions()).extracting("code").containsExactly("xPosition", "noLimitMarked");
    }

    @Test
    void withoutAThreadItIsRefused() {
        assertThat(MarkingReader.read("HSS H3").findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.sentence())
                        .isEqualTo(
                                "marking: \"HSS H3\" names no thread: is empty. To mend: write it as M8x1.25-6H or 1/4-20"
                                        + " UNC-2B."));
        assertThat(MarkingReader.read("  ").findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.why()).isEqualTo("is empty"));
    }

    @Test
    void damagedMarkingsAreReadOrRefusedWithAMend() {
        List<String> seeds = List.of(
                "3/8-16 NC LH HS G H3",
                "M10x1.5 D6 HSS-E 4FL",
                "M8 ISO2/6H DIN 371",
                "1/2-13 CUT THREAD HS",
                "G 1/2 HSS",
                "1/4-20 STI GH2",
                "7/16-14 NC +.0017");
        Random random = new Random(11);
        for (int i = 0; i < 1_000; i++) {
            StringBuilder text = new StringBuilder(seeds.get(random.nextInt(seeds.size())));
            for (int n = random.nextInt(4); n >= 0; n--) {
                int at = random.nextInt(text.length() + 1);
                text.insert(at, (char) (32 + random.nextInt(95)));
                text.deleteCharAt(random.nextInt(text.length()));
            }
            Answer<Marking> answer = MarkingReader.read(text.toString());
            if (answer instanceof Answer.Of<Marking> of) {
                assertThat(MarkingReader.read(of.value().written()).findings())
                        .as("%s written as %s", text, of.value().written())
                        .isEmpty();
            } else {
                assertThat(answer.findings())
                        .allSatisfy(finding -> assertThat(finding.mend()).isNotBlank());
            }
        }
    }
}
