// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.List;
import java.util.function.Consumer;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Mark;
import landfall.sheets.paper.SheetContent.Fact;
import landfall.sheets.paper.SheetContent.Key;
import landfall.sheets.paper.SheetContent.Row;
import landfall.sheets.paper.SheetContent.Tick;

/**
 * Lays a sheet's content out as XHTML: first page what to set, with the pictures; second page what to do; a leaf of its
 * own for afterwards. Tables, as the PDF's renderer knows no other way to put things side by side.
 */
final class SheetPage {
    private static final int MOST_BOXES = 5;

    private final SheetContent content;
    private final PaperSize paper;
    private final String foot;
    private final StringBuilder page = new StringBuilder();
    private int marks;

    private SheetPage(SheetContent content, PaperSize paper, String foot) {
        this.content = content;
        this.paper = paper;
        this.foot = foot;
    }

    static String of(SheetContent content, PaperSize paper, String foot) {
        return new SheetPage(content, paper, foot).write();
    }

    private String write() {
        page.append("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n");
        page.append("<meta charset=\"UTF-8\"/>\n<title>")
                .append(text(content.heading().title()));
        page.append(" regrind set-up</title>\n<style>\n")
                .append(SheetStyle.of(paper, foot))
                .append("</style>\n</head>\n<body>\n");
        head();
        keys();
        pictures();
        page.append("<div class=\"next\"></div>\n");
        readings();
        steps();
        cautions();
        page.append(AfterPage.of(content.heading().title(), content.work().after()));
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

    private void keys() {
        page.append("<table class=\"keys\"><tr>\n");
        for (Key key : content.keys().figures()) {
            page.append("<td><div class=\"name\">").append(text(key.name())).append("</div><div class=\"figure\">");
            page.append(text(key.figure())).append("</div>");
            for (String under : key.under()) {
                page.append("<div class=\"under\">").append(text(under)).append("</div>");
            }
            page.append("</td>\n");
        }
        page.append("</tr></table>\n");
        SheetContent.Verdict verdict = content.keys().gap();
        page.append("<table><tr><td class=\"mark\">")
                .append(mark(verdict.mark()))
                .append("</td><td><b>");
        page.append(text(verdict.word()))
                .append("</b> ")
                .append(text(verdict.why()))
                .append("</td></tr></table>\n");
    }

    private String mark(Mark mark) {
        marks++;
        return mark.draw("mark-" + marks, Ink.PAPER).svg();
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
        facts(content.work().facts().taken());
        page.append("</td></tr></table>\n<p><b>")
                .append(text(pictures.dials().words()))
                .append("</b></p>\n");
        page.append("<table class=\"pictures dials\"><tr>");
        pictures.dials()
                .faces()
                .forEach(face -> page.append("<td>").append(face.svg()).append("</td>"));
        page.append("</tr></table>\n");
        page.append("<div class=\"small\">\n");
        facts(content.work().facts().behind());
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

    /** Short sentences in two columns, read down the first and then down the second. */
    private void columns(List<String> sentences, Consumer<String> write) {
        if (sentences.isEmpty()) {
            return;
        }
        int half = (sentences.size() + 1) / 2;
        page.append("<table class=\"columns\"><tr>");
        for (List<String> column : List.of(sentences.subList(0, half), sentences.subList(half, sentences.size()))) {
            page.append("<td>");
            for (String sentence : column) {
                page.append("<p>");
                write.accept(sentence);
                page.append("</p>");
            }
            page.append("</td>");
        }
        page.append("</tr></table>\n");
    }

    /** A box for each pass, or a count when there are too many to tick. */
    private static String boxes(int count) {
        return count <= MOST_BOXES ? "<span class=\"box\"></span>".repeat(count) : count + " passes ______";
    }

    private void facts(List<Fact> facts) {
        page.append("<table class=\"facts\">\n");
        for (Fact fact : facts) {
            page.append("<tr><td class=\"name\">").append(text(fact.name())).append("</td><td>");
            page.append(text(fact.text())).append("</td></tr>\n");
        }
        page.append("</table>\n");
    }

    private void steps() {
        page.append("<h2>Procedure</h2>\n<table class=\"steps\">\n<colgroup>");
        page.append("<col class=\"tick\"/><col class=\"count\"/><col/>");
        page.append("<col class=\"figure\"/><col class=\"note\"/></colgroup>\n");
        int count = 0;
        for (Tick step : content.work().steps()) {
            count++;
            page.append("<tr><td class=\"tick\"><span class=\"box\"></span></td><td class=\"count\">")
                    .append(count);
            boolean plain = step.figure().isEmpty() && !step.note() && step.passes() == 0;
            page.append(plain ? "</td><td colspan=\"3\">" : "</td><td>")
                    .append(text(step.text()))
                    .append("</td>");
            if (plain) {
                page.append("</tr>\n");
                continue;
            }
            page.append("<td class=\"figure\">").append(text(step.figure())).append("</td><td class=\"note\">");
            page.append(step.passes() > 0 ? boxes(step.passes()) : "read _______")
                    .append("</td></tr>\n");
        }
        page.append("</table>\n");
    }

    private void cautions() {
        SheetContent.Cautions cautions = content.work().cautions();
        page.append("<h2>Cautions</h2>\n");
        columns(
                cautions.raised(),
                caution -> page.append("<b>\u26a0 ").append(text(caution)).append("</b>"));
        columns(cautions.always(), caution -> page.append("\u2022 ").append(text(caution)));
    }

    static String text(String plain) {
        return plain.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
