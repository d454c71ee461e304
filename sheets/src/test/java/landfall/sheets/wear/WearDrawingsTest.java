// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.wear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import landfall.cost.Bench;
import landfall.cost.LimitChoice;
import landfall.cost.SharpeningsAt;
import landfall.history.Happening;
import landfall.material.Materials;
import landfall.quantity.Length;
import landfall.quantity.Money;
import landfall.quantity.UnitSystem;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Svg;
import landfall.sheets.draw.TextBox;
import landfall.sheets.draw.Texts;
import landfall.sheets.figure.Figures;
import landfall.thread.callout.CallOuts;
import landfall.wear.Prior;
import landfall.wear.Run;
import landfall.wear.WearCurve;
import landfall.wear.WearLaw;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What records teach, drawn")
class WearDrawingsTest {
    private static final Figures MM = new Figures(UnitSystem.METRIC);
    private static final Prior M8 = Prior.practice(
            CallOuts.read("M8x1.25-6H").orThrow().thread(),
            Materials.find("material", "C45").orThrow());
    private static final SharpeningsAt SHARPENINGS = limit -> (int) (11 / (limit.mm() + 0.05));

    private static WearCurve curve(List<Run.Land> lands, int... holes) {
        List<Happening.Tapped> cuts = new ArrayList<>();
        for (int count : holes) {
            cuts.add(new Happening.Tapped(
                    new Happening.Holes(count, false),
                    new Happening.Work(M8.subject().material().id(), Length.ofMm(12)),
                    new Happening.Felt(null, null, null)));
        }
        Run run = new Run("T1", new Run.Span(Run.Start.NEW, Run.End.OPEN, null), cuts, lands);
        return WearLaw.of(List.of(run), M8).curve(run).value();
    }

    private static LimitChoice choice(double tap, double sharpening, double spoilt) {
        Bench bench = new Bench(Money.of(tap, "EUR"), Money.of(sharpening, "EUR"), Money.of(spoilt, "EUR"));
        return LimitChoice.of(WearLaw.of(List.of(), M8), bench, SHARPENINGS);
    }

    /** A tap that is fresh, one in its middle, one far past its limit; none with words over words. */
    @ParameterizedTest
    @CsvSource({"1, 0.05", "150, 0.12", "900, 0.25", "4000, 0.29", "20, 0.4"})
    void wearIsDrawnWithItsBandTheLimitAndNow(int holes, double land) {
        for (List<Run.Land> lands : List.of(List.<Run.Land>of(), List.of(new Run.Land(1, Length.ofMm(land))))) {
            WearCurve curve = curve(lands, holes);
            for (UnitSystem units : UnitSystem.values()) {
                Drawing drawing = new WearView(curve, new Figures(units)).draw("wear", Ink.PAPER);
                Texts.fitAndKeepApart(drawing);
                assertThat(Svg.paths(drawing, "alarm")).hasSize(1);
                assertThat(Svg.paths(drawing, "wanted")).hasSize(1);
                Svg.parse(drawing.svg());
                for (String word : List.of("outline", "fine", "hatch")) {
                    Svg.paths(drawing, word).stream()
                            .flatMap(path -> Svg.places(path).stream())
                            .forEach(spot -> {
                                assertThat(spot.x()).isBetween(0.0, WearView.SIZE.x());
                                assertThat(spot.y()).isBetween(8.9, WearView.SIZE.y());
                            });
                }
            }
        }
    }

    @Test
    void whatWasMeasuredIsACrossAndIsNamed() {
        WearCurve none = curve(List.of(), 150);
        WearCurve one = curve(List.of(new Run.Land(1, Length.ofMm(0.12))), 150);
        int without = Svg.paths(new WearView(none, MM).draw("wear", Ink.PAPER), "outline")
                .size();
        Drawing drawing = new WearView(one, MM).draw("wear", Ink.PAPER);
        assertThat(Svg.paths(drawing, "outline")).hasSize(without + 2);
        assertThat(drawing.texts()).extracting(TextBox::text).contains("cross: as measured", "now 150");
    }

    /** Cheap and dear parts: the best moves, and no words meet. */
    @ParameterizedTest
    @CsvSource({"20, 6, 40", "20, 0, 4000", "150, 60, 0", "3, 1, 1"})
    void costIsDrawnWithTheBestLimitMarked(double tap, double sharpening, double spoilt) {
        LimitChoice choice = choice(tap, sharpening, spoilt);
        for (UnitSystem units : UnitSystem.values()) {
            CostView view = new CostView(choice, "EUR", new Figures(units));
            Drawing drawing = view.draw("cost", Ink.PAPER);
            Texts.fitAndKeepApart(drawing);
            assertThat(Svg.paths(drawing, "wanted")).hasSize(1);
            assertThat(Svg.paths(drawing, "hidden")).hasSizeLessThanOrEqualTo(1);
            assertThat(view.said()).startsWith("A hole is cheapest");
        }
    }

    /** The lowest place of the drawn curve is that of the best limit. */
    @Test
    void theMarkedLimitIsWhereTheCurveIsLowest() {
        LimitChoice choice = choice(20, 6, 40);
        Drawing drawing = new CostView(choice, "EUR", MM).draw("cost", Ink.PAPER);
        String curve = Svg.paths(drawing, "outline").stream()
                .filter(path -> Svg.places(path).size() > 10)
                .findFirst()
                .orElseThrow();
        var lowest = Svg.places(curve).stream()
                .max(java.util.Comparator.comparingDouble(spot -> spot.y()))
                .orElseThrow();
        double marked = Svg.places(Svg.paths(drawing, "wanted").get(0)).get(0).x();
        assertThat(Math.abs(lowest.x() - marked)).isLessThan(0.05);
    }
}
