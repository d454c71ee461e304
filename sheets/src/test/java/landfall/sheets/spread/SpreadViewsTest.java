// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.spread;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import landfall.cards.spread.SpreadSetup;
import landfall.cards.spread.SpreadWish;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.TextBox;
import landfall.spread.Run;
import landfall.spread.Summary;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Many set-ups drawn")
class SpreadViewsTest {
    private final SpreadSetup setup = SpreadSetup.of(new SpreadWish(
                    "hole",
                    Map.of("thread", "M8x1.25-6H", "blind", "yes"),
                    new TreeMap<>(Map.of("depth", "uniform 8 mm; 24 mm", "chamfer-threads", "uniform 2; 4")),
                    Map.of("depth.drill", "20 mm or less"),
                    Map.of("samples", "2000")))
            .orThrow();
    private final Summary summary = setup.run(2).go(Run.Watch.NONE);

    private static List<String> texts(Drawing drawing) {
        return drawing.texts().stream().map(TextBox::text).toList();
    }

    @Test
    void theHistogramNamesResultLimitsAndQuantiles() {
        HistogramView view = new HistogramView(setup, summary, 0);
        assertThat(view.isThere()).isTrue();
        Drawing drawing = view.draw("h", Ink.PAPER);
        assertThat(texts(drawing)).contains("depth.drill, mm", "limits: 20 mm or less");
        assertThat(texts(drawing)).anyMatch(text -> text.startsWith("nine of ten: "));
        assertThat(drawing.svg()).contains("<svg").doesNotContain("NaN");
    }

    @Test
    void theCausesStandWorstFirst() {
        CausesView view = new CausesView(setup, summary, 0);
        List<String> texts = texts(view.draw("c", Ink.PAPER));
        assertThat(texts.indexOf("depth")).isLessThan(texts.indexOf("chamfer-threads"));
        assertThat(view.said()).startsWith("depth.drill moves most with depth ");
    }

    @Test
    void theCurveAlongAFieldStaysOnItsPaper() {
        AlongView view = new AlongView(setup, summary, 0, 1);
        assertThat(view.isThere()).isTrue();
        Drawing drawing = view.draw("a", Ink.PAPER);
        assertThat(texts(drawing)).anyMatch(text -> text.startsWith("depth, mm; hatched"));
        assertThat(drawing.svg()).doesNotContain("NaN").doesNotContain("Infinity");
    }
}
