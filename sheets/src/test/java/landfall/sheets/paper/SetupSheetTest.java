// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import landfall.quantity.UnitSystem;
import landfall.sheets.draw.Svg;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SetupSheetTest {
    static final SheetOrder A4 = new SheetOrder(UnitSystem.METRIC, PaperSize.A4, "Landfall, test of a sheet");
    static final SheetOrder LETTER = new SheetOrder(UnitSystem.INCH, PaperSize.LETTER, "Landfall, test of a sheet");

    @Test
    void theGoldenSheetsHold() throws IOException {
        // Written first, compared after, so that one run shows every sheet that has changed.
        Golden.write("half-13-worn-letter.html", SetupSheet.html(Examples.wornHalfInch(), LETTER));
        Golden.write("m8-a4.html", SetupSheet.html(Examples.metric(), A4));
        Golden.write("m10-left-hand-a4.html", SetupSheet.html(Examples.leftHand(), A4));
        Golden.holds("half-13-worn-letter.html");
        Golden.holds("m8-a4.html");
        Golden.holds("m10-left-hand-a4.html");
    }

    @Test
    void theSheetIsWellFormedAndItsIdsAreUnique() {
        Element page = Svg.parse(SetupSheet.html(ShopTaps.plug(), A4));
        NodeList all = page.getElementsByTagName("*");
        java.util.Set<String> ids = new java.util.TreeSet<>();
        for (int i = 0; i < all.getLength(); i++) {
            String id = ((Element) all.item(i)).getAttribute("id");
            assertThat(id.isEmpty() || ids.add(id))
                    .as("second element with id %s", id)
                    .isTrue();
        }
        assertThat(page.getElementsByTagName("svg").getLength()).isEqualTo(11);
    }

    @Test
    void everyTargetOfTheSetUpStandsInTheTable() {
        String html = SetupSheet.html(ShopTaps.plug(), A4);
        var figures = new landfall.sheets.figure.Figures(UnitSystem.METRIC);
        ShopTaps.plug()
                .motion()
                .dial()
                .forEach(target -> assertThat(html).contains("<td>" + figures.signed(target.reading()) + "</td>"));
    }

    @Test
    void everyStepCautionAndAssumptionOfTheSetUpIsOnTheSheet() {
        String html = SetupSheet.html(ShopTaps.large(), A4).replace("&quot;", "\"");
        ShopTaps.large().work().procedure().forEach(step -> assertThat(html).contains(step.text()));
        ShopTaps.large().cautions().forEach(caution -> assertThat(html).contains(caution.text()));
        ShopTaps.large().assumed().forEach(caution -> assertThat(html).contains(caution.text()));
        assertThat(html).contains("GAP NOT CLEAR: do not grind with this cam.");
        assertThat(html).contains("Grinding takes the coating off");
    }

    @Test
    void afterTheGrindThereIsABlankForEachLandAndTheLifeLine() {
        String html = SetupSheet.html(ShopTaps.plug(), A4);
        assertThat(html)
                .contains("chamfer length of each land, by loupe and scale")
                .contains("<span class=\"blank\">3 _______</span>")
                .doesNotContain("<span class=\"blank\">4 _______</span>")
                .contains("trial hole in scrap")
                .contains("By the chamfer alone: ")
                .contains("lf-drawing")
                .contains("Sharpenings left, from now to scrap");
    }

    @Test
    void whatAPersonTypedCannotBreakThePage() {
        SheetOrder order = new SheetOrder(UnitSystem.METRIC, PaperSize.A4, "\"}</style><b>&");
        String html = SetupSheet.html(ShopTaps.plug(), order);
        assertThat(Svg.parse(html).getElementsByTagName("style").getLength()).isEqualTo(1);
        assertThat(html).contains("\\000022}\\00003c/style>\\00003cb>\\000026");
    }
}
