// SPDX-License-Identifier: Apache-2.0
package landfall.cards.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import landfall.fault.Finding;
import landfall.quantity.UnitSystem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A form judges everything that was typed at once")
class FormTest {
    static final Field<Integer> COUNT = Field.needed("flutes.count", Kinds.count(1, 12), "4");
    static final Field<String> KIND =
            Field.optional("flutes.kind", Kinds.choice(Kinds.ordered("straight", "S", "spiral-left", "L")), "straight");
    static final Field<UnitSystem> UNITS = Field.optional("units", Kinds.UNITS, "inch");
    static final Form FORM = Form.of("tap card", COUNT, KIND, UNITS);

    @Test
    void whatIsGivenIsRead() {
        Entries entries = FORM.judge(Map.of("flutes.count", " 4 ", "flutes.kind", "Spiral left"), UnitSystem.METRIC)
                .orThrow();
        assertThat(entries.need(COUNT)).isEqualTo(4);
        assertThat(entries.get(KIND)).contains("L");
        assertThat(entries.get(UNITS)).isEmpty();
        assertThat(entries.typed(COUNT)).isEqualTo(" 4 ");
    }

    @Test
    void everyBadMissingAndUnknownFieldIsFoundAtOnce() {
        assertThat(FORM.judge(
                                Map.of("flutes.kind", "strait", "flutes.cuont", "3", "units", "furlongs"),
                                UnitSystem.METRIC)
                        .findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "flutes.count: \"\" is needed: how many flutes. To mend: give a whole number from 1 to 12, "
                                + "such as 4.",
                        "flutes.kind: \"strait\" must be one of straight, spiral-left. "
                                + "To mend: write straight, the nearest, or another of them.",
                        "units: \"furlongs\" must be one of inch, metric. "
                                + "To mend: write inch, the nearest, or another of them.",
                        "flutes.cuont: \"3\" is not a field of tap card. "
                                + "To mend: write flutes.count, the nearest, or leave it out.");
    }

    @Test
    void aCountOutOfRangeSaysTheRange() {
        assertThat(FORM.judge(Map.of("flutes.count", "13"), UnitSystem.METRIC).findings())
                .containsExactly(
                        new Finding("flutes.count", "13", "must be from 1 to 12", "write a whole number from 1 to 12"));
        assertThat(FORM.judge(Map.of("flutes.count", "3.5"), UnitSystem.METRIC).findings())
                .containsExactly(new Finding(
                        "flutes.count", "3.5", "is not a whole number", "write a whole number from 1 to 12"));
    }

    @Test
    void theNearestOfAKeyWithoutItsGroupIsTheKeyInTheGroup() {
        assertThat(Nearest.of("pointDiameter", List.of("thread", "chamfer.pointDiameter", "shank.diameter")))
                .isEqualTo("chamfer.pointDiameter");
        assertThat(Nearest.of("worknig-relief", List.of("wear", "working-relief")))
                .isEqualTo("working-relief");
    }

    @Test
    void noTypedKeyBreaksTheForm() {
        Random random = new Random(7);
        for (int i = 0; i < 5_000; i++) {
            String key = random.ints(random.nextInt(12), 32, 0x2100)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
            assertThat(FORM.judge(Map.of(key, key), UnitSystem.INCH).findings())
                    .allSatisfy(finding -> assertThat(finding.mend()).isNotBlank());
        }
    }
}
