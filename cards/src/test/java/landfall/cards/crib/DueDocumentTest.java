// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.TextAnswer;
import landfall.fault.Caution;
import landfall.history.Happening;
import landfall.wear.Job;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.Test;

class DueDocumentTest {
    private final List<TapOnRecord> taps = DueSamples.taps();
    private final ShopLaws laws = DueSamples.laws();

    @Test
    void tapsOfOneThreadAndMaterialTeachOneLaw() {
        assertThat(found(0).law().records().runs()).isEqualTo(7);
        assertThat(found(0).law().records().known()).isEqualTo(4);
        assertThat(found(0).law()).isSameAs(found(2).law());
    }

    @Test
    void theOneThatIsDueFirstStandsAtTheHead() {
        assertThat(laws.found(taps)).extracting(found -> found.tap().mark()).containsExactly("T3", "T2", "T1");
    }

    @Test
    void aTapThatHasCutNothingOrHasEndedIsNotFound() {
        assertThat(laws.find(taps.get(3))).isNull();
        TapOnRecord broken = DueSamples.tap(
                "T9",
                Map.of("thread", "M8x1.25"),
                DueSamples.BOUGHT,
                DueSamples.tapped(10),
                new Happening.Broken(null, false));
        assertThat(laws.find(broken)).isNull();
    }

    @Test
    void aCardTooPoorForASetUpIsInNoSittingAndThatIsSaid() {
        Document all = DueSamples.documents().get(2);
        assertThat(all.cautions()).extracting(Caution::code).containsExactly("setUpNotTold");
        assertThat(rows(all, "taps")).hasSize(3);
        assertThat(rows(all, "sittings")).hasSize(1);
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        WorkingCheck.everyFormulaGivesItsFigure(
                DueDocument.of(found(0), new Job(40, null)).working());
        DueSamples.documents().forEach(document -> WorkingCheck.everyFormulaGivesItsFigure(document.working()));
    }

    @Test
    void textSaysHolesAsWholeNumbers() {
        String text = TextAnswer.write(DueSamples.documents().get(0));
        assertThat(text).contains("Next sharpening: T1").contains(" holes").doesNotContainPattern("\\.\\d+ holes");
    }

    private ShopLaws.Found found(int tap) {
        return Objects.requireNonNull(laws.find(taps.get(tap)));
    }

    private static List<Item.Group> rows(Document document, String key) {
        return document.items().stream()
                .filter(item -> item instanceof Item.Rows && item.key().equals(key))
                .map(item -> ((Item.Rows) item).rows())
                .findFirst()
                .orElseThrow();
    }
}
