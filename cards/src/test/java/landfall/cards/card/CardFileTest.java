// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import landfall.cards.Cards;
import landfall.fault.Finding;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A file is judged as the card that it was given for")
class CardFileTest {
    private static CardFile tap(String json) {
        return CardFile.read(TapCard.FORM, "card", "tap.json", json);
    }

    private static CardFile fixture(String json) {
        return CardFile.read(FixtureCard.FORM, "fixture", "fixture.json", json);
    }

    @Test
    void theExamplesAreOfTheirCards() {
        for (String name : List.of("tap-m8.json", "tap-half-13-worn.json", "tap-m10-left-hand.json")) {
            assertThat(tap(Cards.text(name)).findings()).isEmpty();
        }
        for (String name : List.of("fixture-three-lobes.json", "fixture-four-lobes.json")) {
            CardFile file = fixture(Cards.text(name));
            assertThat(file.findings()).isEmpty();
            assertThat(file.fields()).isEqualTo(Cards.typed(name));
        }
    }

    @Test
    void aFieldOfAnotherCardIsRefusedAndNotRead() {
        CardFile file = fixture("{\"thread\":\"M8x1.25-6H\",\"cam\":{\"lobes\":3}}");
        assertThat(file.fields()).containsOnlyKeys("cam.lobes");
        assertThat(file.findings())
                .extracting(Finding::sentence)
                .containsExactly("thread: \"M8x1.25-6H\" is not a field of the fixture card but of a tap card. "
                        + "To mend: move it to the tap card, or leave it out.");
        CardFile other = tap("{\"thread\":\"M8x1.25-6H\",\"cam\":{\"lobes\":3},\"flutes\":{\"cuont\":3}}");
        assertThat(other.fields()).containsOnlyKeys("thread");
        assertThat(other.findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "cam.lobes: \"3\" is not a field of the tap card but of a fixture card. "
                                + "To mend: move it to the fixture card, or leave it out.",
                        "flutes.cuont: \"3\" is not a field of the tap card. "
                                + "To mend: write flutes.count, the nearest, or leave it out.");
    }

    @Test
    void aCardOfAnotherKindIsRefusedOnce() {
        CardFile swapped = fixture(Cards.text("tap-m8.json"));
        assertThat(swapped.isLost()).isTrue();
        assertThat(swapped.findings())
                .extracting(Finding::sentence)
                .containsExactly("fixture: \"fixture.json\" holds a tap card, not a fixture card. "
                        + "To mend: give the file of a fixture card here, and look whether two files are swapped.");
        assertThat(tap(Cards.text("fixture-three-lobes.json")).findings())
                .extracting(Finding::field)
                .containsExactly("card");
        assertThat(tap(Cards.text("shop.json")).findings())
                .extracting(Finding::why)
                .containsExactly("holds a shop card, not a tap card");
    }

    @Test
    void aBrokenFileIsRefusedUnderItsOwnName() {
        assertThat(fixture("{\"cam\": ").findings()).singleElement().satisfies(finding -> {
            assertThat(finding.field()).isEqualTo("fixture");
            assertThat(finding.given()).startsWith("fixture.json, line 1, column ");
            assertThat(finding.why()).startsWith("is not JSON");
        });
    }
}
