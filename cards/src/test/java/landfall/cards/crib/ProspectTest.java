// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import landfall.cards.Cards;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.answer.TextAnswer;
import landfall.cards.words.Words;
import landfall.cost.NextStep;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.history.Happening;
import landfall.history.Price;
import landfall.working.Step;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What the records teach of one tap")
class ProspectTest {
    private final List<TapOnRecord> taps = DueSamples.measured();

    private Prospect priced() {
        return DueSamples.prospect(taps, 0, DueSamples.PRICED);
    }

    @Test
    void wearJobCostsAndMeasurementsStandInOneAnswer() {
        String json = JsonAnswer.line(ProspectDocument.of(priced()), false);
        assertThat(json)
                .contains("\"wear\":{\"when\":")
                .contains("\"curve\":[{\"holes\":")
                .contains("\"seen\":[{\"holes\":{\"value\":60,")
                .contains("\"job\":{\"holes\":40,")
                .contains("\"cost\":{\"currency\":\"EUR\",\"best\":")
                .contains("\"next\":{\"verdict\":\"sharpen\"")
                .contains("\"go\":{\"gauged\":1,\"went\":1,")
                .contains("\"torque\":{\"measured\":1,");
        assertThat(TextAnswer.write(ProspectDocument.of(priced()))).contains("Next sharpening");
    }

    @Test
    void whatIsNotKnownIsNamedWithHowToTellIt() {
        Prospect bare = DueSamples.prospect(taps, 2, Map.of());
        assertThat(bare.costs()).isNull();
        assertThat(bare.job()).isNull();
        assertThat(bare.wanting())
                .containsExactly(
                        Words.of("prospect.want.price"),
                        Words.of("prospect.want.sharpening"),
                        Words.of("prospect.want.spoilt"),
                        Words.of("prospect.want.card"),
                        Words.of("prospect.want.torque"));
    }

    /** The price on record stands where none is typed. */
    @Test
    void thePriceThatWasPaidIsTaken() {
        Happening paid = new Happening.Bought(new Price(new java.math.BigDecimal("31.50"), "EUR"), null);
        Map<String, String> card = Cards.typed("tap-m8.json");
        TapOnRecord tap = DueSamples.tap("T7", card, paid, DueSamples.tapped(50));
        ShopLaws.Found found =
                Objects.requireNonNull(DueSamples.laws(List.of(tap)).find(tap));
        Prospect prospect = Prospect.of(found, DueSamples.history("T7"), Map.of("sharpening", "6", "spoilt", "40"))
                .orThrow();
        assertThat(Objects.requireNonNull(prospect.costs()).bench().tap().amount())
                .isEqualTo(31.5, within(1e-12));
        assertThat(prospect.costs().currency()).isEqualTo("EUR");
    }

    @Test
    void aDearPartSharpensEarlier() {
        Costs cheap = Objects.requireNonNull(priced().costs());
        Map<String, String> dear = Map.of("price", "20", "sharpening", "6", "spoilt", "4000");
        Costs costs = Objects.requireNonNull(DueSamples.prospect(taps, 0, dear).costs());
        assertThat(costs.choice().best().limit())
                .isLessThan(cheap.choice().best().limit());
        assertThat(cheap.next().value().verdict()).isEqualTo(NextStep.Verdict.SHARPEN);
    }

    /** Two sharpenings on record are taken off what the card as new allows; a measured length knows better. */
    @Test
    void sharpeningsLeftCountWhatWasGround() {
        Prospect prospect = priced();
        Costs costs = Objects.requireNonNull(prospect.costs());
        assertThat(costs.left()).isEqualTo(costs.choice().best().sharpenings() - 2);
        assertThat(prospect.cautions()).extracting(Caution::code).contains("cardAsNew");
    }

    @Test
    void twoCurrenciesAreRefused() {
        ShopLaws.Found found = Objects.requireNonNull(DueSamples.laws(taps).find(taps.get(0)));
        Map<String, String> typed = Map.of("price", "20 EUR", "sharpening", "6 USD", "spoilt", "40 EUR");
        assertThat(Prospect.of(found, DueSamples.history("T1"), typed).findings())
                .extracting(Finding::sentence)
                .containsExactly("sharpening: \"EUR and USD\" must be all in one currency; none is converted."
                        + " To mend: write every price in the same currency.");
    }

    @Test
    void everyPrintedFormulaGivesItsFigureAndEveryFigureHasItsStep() {
        for (Document document :
                List.of(ProspectDocument.of(priced()), ProspectDocument.of(DueSamples.prospect(taps, 2, Map.of())))) {
            WorkingCheck.everyFormulaGivesItsFigure(document.working());
            List<String> without = new ArrayList<>();
            for (Document.Shown shown : document.figures()) {
                if (document.working().stream().noneMatch(step -> isBehind(step, shown))) {
                    without.add(shown.path() + " " + shown.point().value());
                }
            }
            assertThat(without).isEmpty();
            document.walk((path, item) ->
                    assertThat(Words.find(path)).as("words for " + path).isPresent());
        }
    }

    private static boolean isBehind(Step step, Document.Shown shown) {
        double factor = shown.unit().heldPer(step.rule().unit());
        double value = shown.point().value();
        return step.rule().equals(shown.point().rule())
                && Math.abs(step.value() * factor - value) <= 1e-9 * Math.abs(value) + 1e-12;
    }
}
