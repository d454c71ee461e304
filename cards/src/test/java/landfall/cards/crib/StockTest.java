// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.words.Words;
import landfall.cost.Saved;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.history.Price;
import landfall.quantity.TimeSpan;
import landfall.working.WorkingCheck;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What to buy, and what sharpening saved")
class StockTest {
    private static final Price TWENTY = new Price(new BigDecimal("20"), "EUR");
    private static final Saved.Period YEAR =
            new Saved.Period(Instant.parse("2026-01-01T00:00:00Z"), Instant.parse("2027-01-01T00:00:00Z"));
    private static final TimeSpan A_YEAR = TimeSpan.ofSeconds(52 * 7 * 86400.0);

    private static Stock.OnRecord records(@Nullable Price price, Stock.Shelved... shelves) {
        List<TapOnRecord> taps = DueSamples.taps();
        ShopLaws.Found found = Objects.requireNonNull(DueSamples.laws().find(taps.get(0)));
        Stock.Ground ground = new Stock.Ground("M8x1.25", found.law(), DueSamples.runs("T1"), price);
        return new Stock.OnRecord(List.of(shelves), A_YEAR, List.of(ground), YEAR);
    }

    /** The shelf of docs/methods/cost-per-hole.md: 2 taps, 8 used up in 52 weeks, 2 + 4 weeks: 0.0864, buy one. */
    @Test
    void theShelfOfTheNoteIsToBuyOne() {
        Stock stock = Stock.of(
                        records(
                                TWENTY,
                                new Stock.Shelved("M8x1.25", 2, 8, TWENTY),
                                new Stock.Shelved("M6x1", 9, 1, TWENTY),
                                new Stock.Shelved("M5x0.8", 1, 0, null)),
                        Map.of("sharpening", "6 EUR"))
                .orThrow();
        assertThat(stock.buy()).hasSize(1);
        assertThat(stock.buy().get(0).shelved().size()).isEqualTo("M8x1.25");
        assertThat(stock.buy().get(0).shelf().value().order()).isEqualTo(1);
        assertThat(stock.buy().get(0).shelf().value().risk()).isEqualTo(0.0864, within(5e-5));
        assertThat(stock.enough()).isEqualTo(2);
        assertThat(stock.currency()).isEqualTo("EUR");
        assertThat(stock.cautions()).extracting(Caution::code).containsExactly("spansAssumed");
        assertThat(stock.wanting()).isEmpty();
    }

    /** Two sharpenings began runs of 140 and 60 holes: as new taps would have cut them, less two sharpenings. */
    @Test
    void whatSharpeningSavedIsNewTapsForItsHolesLessTheSharpenings() {
        Stock stock = Stock.of(records(TWENTY), Map.of("sharpening", "6 EUR")).orThrow();
        Saved saved = stock.saved().get(0).saved().value();
        assertThat(saved.sharpenings()).isEqualTo(2);
        assertThat(saved.holes()).isEqualTo(200);
        double life = DueSamples.laws()
                .find(DueSamples.taps().get(0))
                .law()
                .learned()
                .value()
                .middle()
                .expected();
        assertThat(saved.money().amount()).isEqualTo(20 * 200 / life - 12, within(1e-9));
    }

    @Test
    void whatIsNotKnownIsNamedWithHowToTellIt() {
        Stock stock = Stock.of(records(null, new Stock.Shelved("M5x0.8", 1, 0, null)), Map.of())
                .orThrow();
        assertThat(stock.buy()).isEmpty();
        assertThat(stock.saved()).isEmpty();
        assertThat(stock.unpriced()).isEqualTo(2);
        assertThat(stock.wanting())
                .containsExactly(
                        Words.of("stock.want.ended"),
                        Words.of("stock.want.sharpening"),
                        Words.of("stock.want.price", 2));
        Stock.OnRecord none = new Stock.OnRecord(List.of(), TimeSpan.ofSeconds(0), List.of(), YEAR);
        assertThat(Stock.of(none, Map.of()).orThrow().wanting())
                .contains(Words.of("stock.want.events"), Words.of("stock.want.sharpened"));
    }

    @Test
    void aRiskThatIsNoneIsRefused() {
        Stock.OnRecord records = records(TWENTY, new Stock.Shelved("M8x1.25", 2, 8, TWENTY));
        assertThat(Stock.of(records, Map.of("risk", "0 %", "delivery", "soon")).findings())
                .extracting(Finding::field)
                .containsExactly("delivery", "risk");
        assertThat(Stock.of(records, Map.of("risk", "0 %")).findings())
                .extracting(Finding::field)
                .containsExactly("risk");
    }

    @Test
    void everyFigureHasItsStepAndEveryItemItsWords() {
        for (Document document : documents()) {
            WorkingCheck.everyFormulaGivesItsFigure(document.working());
            document.walk((path, item) ->
                    assertThat(Words.find(path)).as("words for " + path).isPresent());
            assertThat(JsonAnswer.line(document, true)).doesNotContain("NaN");
        }
        assertThat(JsonAnswer.line(documents().get(0), false))
                .contains("\"buy\":[{\"callout\":\"M8x1.25\",\"onHand\":2,\"usedUp\":8,")
                .contains("\"order\":1")
                .contains("\"saved\":{\"sharpenings\":2,");
    }

    static List<Document> documents() {
        Stock.OnRecord full = records(TWENTY, new Stock.Shelved("M8x1.25", 2, 8, TWENTY));
        return List.of(
                StockDocument.of(Stock.of(full, Map.of("sharpening", "6 EUR")).orThrow()),
                StockDocument.of(Stock.of(records(null, new Stock.Shelved("M8x1.25", 2, 8, null)), Map.of())
                        .orThrow()));
    }
}
