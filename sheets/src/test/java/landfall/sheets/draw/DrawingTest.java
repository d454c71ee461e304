// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class DrawingTest {
    private static Drawing drawing(Ink ink) {
        return new Drawing("d", "A title", "What is <seen> & why", Spot.at(80, 40), ink);
    }

    @Test
    void carriesTitleDescriptionAndRoleForThoseWhoDoNotSeeIt() {
        Element svg = Svg.parse(drawing(Ink.PAPER).svg());
        assertThat(svg.getAttribute("role")).isEqualTo("img");
        assertThat(svg.getAttribute("aria-labelledby")).isEqualTo("d-title d-desc");
        assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("A title");
        assertThat(svg.getElementsByTagName("desc").item(0).getTextContent()).isEqualTo("What is <seen> & why");
        assertThat(svg.getAttribute("width")).isEqualTo("80mm");
        assertThat(svg.getAttribute("viewBox")).isEqualTo("0 0 80 40");
    }

    @Test
    void paperIsBlackOnWhiteAndKnowsNoCustomProperties() {
        String svg = drawing(Ink.PAPER)
                .circle(Spot.at(10, 10), 5, Line.WANTED)
                .text(Spot.at(1, 1), "x", Lettering.NOTE)
                .svg();
        assertThat(svg).contains("#000000").doesNotContain("var(").doesNotContain("currentColor");
    }

    @Test
    void screenTakesTheInkOfThePage() {
        String svg = drawing(Ink.SCREEN)
                .circle(Spot.at(10, 10), 5, Line.WANTED)
                .text(Spot.at(1, 1), "x", Lettering.NOTE)
                .svg();
        assertThat(svg)
                .contains("currentColor")
                .contains("var(--blue, #23508f)")
                .doesNotContain("#000000");
    }

    @Test
    void lineWidthsAreThoseOfIso128() {
        String svg = drawing(Ink.PAPER)
                .line(Spot.at(0, 0), Spot.at(1, 1), Line.OUTLINE)
                .line(Spot.at(0, 0), Spot.at(1, 1), Line.THIN)
                .svg();
        assertThat(svg).contains("stroke-width=\"0.5\"").contains("stroke-width=\"0.25\"");
    }

    @Test
    void textUnderThreeMillimetresIsRefused() {
        assertThatThrownBy(() -> Lettering.NOTE.sized(2.9)).hasMessage("text of 2.9 mm cannot be read at arm's length");
    }

    @Test
    void onlyAClosedOutlineCanBeFilled() {
        Outline open = Outline.from(Spot.at(0, 0)).lineTo(Spot.at(1, 0));
        assertThatThrownBy(() -> drawing(Ink.PAPER).fill(open, Fill.SOLID))
                .hasMessage("only a closed outline can be filled: M0 0L1 0");
    }

    @Test
    void aDimensionEndsItsArrowsAtTheExtensionLines() {
        Drawing drawing = drawing(Ink.PAPER);
        new Dimensions(drawing).across(Spot.at(10, 10), Spot.at(50, 10), 20, "40");
        String svg = drawing.svg();
        assertThat(svg).contains("d=\"M10 20L50 20\"").contains("d=\"M10 20L").contains("d=\"M50 20L47.6");
        assertThat(drawing.texts()).hasSize(1);
        TextBox box = drawing.texts().get(0);
        assertThat(box.left() + box.right()).isEqualTo(60.0);
        assertThat(box.foot()).isLessThanOrEqualTo(20.2);
    }
}
