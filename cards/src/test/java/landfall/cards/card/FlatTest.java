// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.util.Random;
import landfall.fault.Finding;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A JSON card becomes path and text")
class FlatTest {
    @Test
    void keysInsideKeysAreJoinedByDots() {
        assertThat(Flat.read("{\"thread\":\"M8x1.25-6H\",\"flutes\":{\"count\":3,\"core\":\"3.5 mm\"},\"wear\":null}")
                        .orThrow())
                .containsExactly(
                        entry("thread", "M8x1.25-6H"), entry("flutes.count", "3"), entry("flutes.core", "3.5 mm"));
    }

    @Test
    void aTableIsPairsWhateverTheOrderOfItsKeys() {
        assertThat(Flat.read("{\"cam\":{\"table\":[{\"angle\":\"0 deg\",\"rise\":0},{\"rise\":0.5,\"angle\":\"30 "
                                + "deg\"}]}}")
                        .orThrow())
                .containsExactly(entry("cam.table", "0 deg 0, 30 deg 0.5"));
    }

    @Test
    void brokenJsonIsRefusedWithItsPlace() {
        Finding finding = Flat.read("{\"thread\":\"M8\",\n  \"wear\" \"0.2 mm\"}")
                .findings()
                .get(0);
        assertThat(finding.field()).isEqualTo("card");
        assertThat(finding.given()).isEqualTo("line 2, column 10");
        assertThat(finding.why())
                .isEqualTo(
                        "is not JSON: Unexpected character ('\"' (code 34)): was expecting a colon to separate field "
                                + "name and value");
    }

    @Test
    void aKeyGivenTwiceIsRefused() {
        assertThat(Flat.read("{\"wear\":\"1 mm\",\"wear\":\"2 mm\"}")
                        .findings()
                        .get(0)
                        .why())
                .isEqualTo("is not JSON: Duplicate field 'wear'");
    }

    @Test
    void whatIsNotOneObjectIsRefused() {
        assertThat(Flat.read("[1]").findings().get(0).why()).isEqualTo("is not a card: the text does not begin with {");
        assertThat(Flat.read("").findings().get(0).why()).isEqualTo("is not a card: the text does not begin with {");
        assertThat(Flat.read("{} {}").findings().get(0).why())
                .isEqualTo("is not a card: something follows the closing }");
    }

    @Test
    void aListOrAGroupWhereOneValueBelongsIsRefused() {
        assertThat(Flat.read("{\"threadLength\":[1],\"flutes\":{\"count\":[3]},\"backTaper\":{}}")
                        .findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "threadLength: \"[1]\" must be a length: 11.5 mm, 27/64, .4375, 6 thou, not a list. "
                                + "To mend: write the value alone, without [ ], such as 22 mm.",
                        "flutes.count: \"[3]\" must be a whole number from 1 to 16, not a list. "
                                + "To mend: write the value alone, without [ ], such as 3.",
                        "backTaper: \"{..}\" must be a number: 0.001, 1:1000, not a group. "
                                + "To mend: write the value alone, without { }, such as 0.001.");
        assertThat(Flat.read("{\"limit\":{\"pitchMin\":\"7.226 mm\"}}").orThrow())
                .containsExactly(entry("limit.pitchMin", "7.226 mm"));
        assertThat(ShopCard.read("{\"drills\":[\"number\",\"letter\"]}").orThrow())
                .containsExactly(entry("drills", "number, letter"));
    }

    @Test
    void noTextBreaksTheReader() {
        Random random = new Random(3);
        String card = "{\"thread\":\"M8x1.25\",\"cam\":{\"table\":[{\"angle\":\"0 deg\",\"rise\":0}],\"lobes\":3}}";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder(card);
            for (int change = random.nextInt(4); change >= 0; change--) {
                text.setCharAt(random.nextInt(text.length()), "{}[]\",:0a \n\\u".charAt(random.nextInt(13)));
            }
            assertThat(Flat.read(text.toString()).findings())
                    .allSatisfy(finding -> assertThat(finding.mend()).isNotBlank());
        }
        assertThat(Flat.read("[".repeat(100_000)).findings()).isNotEmpty();
        assertThat(Flat.read("{\"a\":".repeat(100_000)).findings()).isNotEmpty();
    }
}
