// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import static landfall.sheets.paper.SheetParts.text;

import landfall.sheets.draw.Drawing;
import landfall.sheets.paper.TappingContent.Line;

/** Lays a tapping sheet out as XHTML: first page what to set and how deep, second page what to do and why. */
final class TappingPage {
    private final TappingContent content;
    private final StringBuilder page = new StringBuilder();
    private final SheetParts parts = new SheetParts(page);

    private TappingPage(TappingContent content) {
        this.content = content;
    }

    static String of(TappingContent content, PaperSize paper, String foot) {
        return new TappingPage(content).write(paper, foot);
    }

    private String write(PaperSize paper, String foot) {
        page.append(SheetParts.head(content.heading().title() + " tapping sheet", paper, foot));
        head();
        parts.keys(content.keys());
        pictures();
        page.append("<div class=\"next\"></div>\n");
        parts.steps(content.work().steps());
        parts.cautions(content.work().cautions());
        working();
        page.append("</body>\n</html>\n");
        return page.toString();
    }

    private void head() {
        SheetContent.Heading heading = content.heading();
        page.append("<table class=\"head\"><tr><td><h1>").append(text(heading.title()));
        page.append("</h1><p>").append(text(heading.tap())).append("</p></td><td class=\"right\">");
        page.append("<p><b>Tapping sheet</b></p><p>").append(text(heading.fixture()));
        page.append("</p><p>part ________ date ________</p></td></tr></table>\n");
    }

    private void pictures() {
        TappingContent.Pictures pictures = content.pictures();
        page.append("<table class=\"pictures halves\"><tr><td>");
        picture(pictures.hole());
        picture(pictures.slices());
        page.append("</td><td>");
        picture(pictures.torque());
        picture(pictures.section());
        parts.facts(content.facts());
        page.append("</td></tr></table>\n");
    }

    private void picture(Drawing drawing) {
        page.append("<div>").append(drawing.svg()).append("</div>\n");
    }

    private void working() {
        page.append("<h2>Working in short</h2>\n<table class=\"working\">\n");
        for (Line line : content.working()) {
            page.append("<tr><td>").append(text(line.means())).append("</td><td>");
            page.append(text(line.formula()))
                    .append("</td><td class=\"value\">")
                    .append(text(line.value()));
            page.append("</td><td>").append(text(line.source())).append("</td></tr>\n");
        }
        page.append("</table>\n");
    }
}
