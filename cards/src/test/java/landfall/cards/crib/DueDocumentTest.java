// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.TextAnswer;
import landfall.fault.Caution;
import landfall.history.Happening;
import landfall.tap.FluteKind;
import landfall.wear.Brief;
import landfall.wear.Job;
import landfall.wear.WearLaw;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.Test;

class DueDocumentTest {
    private static final Map<String, String> M8 = Map.of("thread", "M8x1.25");

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
    void setsAndGaugesAreToldWithWhatIsMissingAndTheDays() {
        Document all = DueSamples.documents().get(7);
        assertThat(all.cautions())
                .extracting(Caution::code)
                .containsExactly("setUpNotTold", "calibrationNotTold", "notWeighed", "moreTaps");
        String text = TextAnswer.write(all);
        assertThat(text).containsPattern("SET-A +perhaps now +T1, T2 +T9");
        assertThat(text).containsPattern("G-1 +GO plug M8x1.25 +over +2026-11-27 +-3");
        assertThat(text).containsPattern("G-2 +NOT GO plug M8x1.25 +near +2026-12-20 +20");
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

    @Test
    void whatIsLeftOutUnweighedIsNotDue() {
        Random chance = new Random(4);
        int left = 0;
        for (int shop = 0; shop < 60; shop++) {
            List<Brief> runs = new ArrayList<>();
            int middle = 20 + chance.nextInt(400);
            for (int i = 0; i < chance.nextInt(30); i++) {
                int holes = (int) Math.max(1, middle * Math.exp(0.4 * chance.nextGaussian()));
                Happening end = chance.nextInt(4) == 0 ? DueSamples.BOUGHT : DueSamples.GROUND;
                TapOnRecord tap = DueSamples.tap("R" + i, M8, DueSamples.BOUGHT, DueSamples.tapped(holes), end);
                runs.addAll(DueSamples.runs(tap.mark()));
            }
            int used = 1 + chance.nextInt(2 * middle);
            Brief own = DueSamples.runs(DueSamples.tap("own", M8, DueSamples.BOUGHT, DueSamples.tapped(used))
                            .mark())
                    .get(0);
            runs.add(own);
            ShopLaws.Key key = new ShopLaws.Key("M8x1.25", FluteKind.STRAIGHT, "1045");
            WearLaw law = ShopLaws.law(
                    key, runs.stream().filter(run -> run.holes() > 0).toList());
            ShopLaws laws = ShopLaws.of(any -> law);
            if (laws.usedMuch(key, own) == 0) {
                left++;
                assertThat(laws.isDue(key, own)).isFalse();
                assertThat(law.dueIn(own).value().left().low()).isGreaterThan(0.3 * used);
            }
        }
        assertThat(left).isBetween(5, 55);
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
