// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import static landfall.sheets.paper.SheetParts.text;

import landfall.sheets.paper.SheetContent.Row;

/**
 * Lays a sheet's content out as XHTML: first page what to set, with the pictures; second page what to do; a leaf of its
 * own for afterwards, what to measure and what should be found. Tables, as the PDF's renderer knows no other way to put
 * things side by side.
 */
final class SheetPage {
    private final SheetContent content;
    private final PaperSize paper;
    private final String foot;
    private final StringBuilder page = new StringBuilder();
    private final SheetParts parts = new SheetParts(page);

    private SheetPage(SheetContent content, PaperSize paper, String foot) {
        this.content = content;
        this.paper = paper;
        this.foot = foot;
    }

    static String of(SheetContent content, PaperSize paper, String foot) {
        return new SheetPage(content, paper, foot).write();
    }

    private String write() {
        page.append(SheetParts.head(content.heading().title() + " regrind set-up", paper, foot));
        head();
        parts.keys(content.keys());
        pictures();
        page.append("<div class=\"next\"></div>\n");
        readings();
        parts.steps(content.work().steps());
        parts.cautions(content.work().cautions());
        page.append(AfterPage.of(content.heading().title(), content.work().after()));
        page.append(RunPage.of(content.heading().title(), content.work().run()));
        page.append("</body>\n</html>\n");
        return page.toString();
    }

    private void head() {
        SheetContent.Heading heading = content.heading();
        page.append("<table class=\"head\"><tr><td><h1>")
                .append(text(heading.title()))
                .append("</h1>");
        page.append("<p>")
                .append(text(heading.tap()))
                .append("</p></td><td class=\"right\"><p><b>Regrind set-up</b></p><p>");
        page.append(text(heading.fixture())).append("</p><p>tap no. ________ date ________</p></td></tr></table>\n");
    }

    private void pictures() {
        SheetContent.Pictures pictures = content.pictures();
        page.append("<table class=\"pictures\"><tr><td rowspan=\"2\">")
                .append(pictures.end().svg());
        page.append("</td><td>").append(pictures.chamfer().svg()).append("</td></tr>\n<tr><td>");
        page.append(pictures.heel().svg()).append("</td></tr></table>\n");
        page.append("<table class=\"pictures\"><tr><td>")
                .append(pictures.fall().svg())
                .append("</td><td>");
        parts.facts(content.work().facts().taken());
        page.append("</td></tr></table>\n<p><b>")
                .append(text(pictures.dials().words()))
                .append("</b></p>\n");
        page.append("<table class=\"pictures dials\"><tr>");
        pictures.dials()
                .faces()
                .forEach(face -> page.append("<td>").append(face.svg()).append("</td>"));
        page.append("</tr></table>\n");
        page.append("<div class=\"small\">\n");
        parts.facts(content.work().facts().behind());
        page.append("</div>\n");
    }

    private void readings() {
        SheetContent.Readings readings = content.readings();
        page.append("<h2>What the dial should read, and what it read (")
                .append(text(readings.unit()))
                .append(")</h2>\n");
        page.append("<table class=\"readings\"><tr><th class=\"first\">land angle</th>");
        readings.places()
                .forEach(place -> page.append("<th>").append(text(place)).append("</th>"));
        for (int land = 1; land <= readings.lands(); land++) {
            page.append(land == 1 ? "<th class=\"divide\">" : "<th>")
                    .append("read on land ")
                    .append(land)
                    .append("</th>");
        }
        page.append("</tr>\n");
        for (Row row : readings.rows()) {
            page.append("<tr><td class=\"angle\">").append(text(row.angle())).append("</td>");
            row.readings()
                    .forEach(
                            reading -> page.append("<td>").append(text(reading)).append("</td>"));
            for (int land = 1; land <= readings.lands(); land++) {
                page.append(land == 1 ? "<td class=\"note divide\"></td>" : "<td class=\"note\"></td>");
            }
            page.append("</tr>\n");
        }
        page.append("</table>\n");
        page.append("<p class=\"notes\">")
                .append(text(String.join(". ", readings.notes())))
                .append(".</p>\n");
    }
}
