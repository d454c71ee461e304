// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.List;
import java.util.function.Consumer;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Mark;
import landfall.sheets.paper.SheetContent.Fact;
import landfall.sheets.paper.SheetContent.Key;
import landfall.sheets.paper.SheetContent.Tick;

/** The parts that sheets have in common, written as XHTML at the end of a page: keys, facts, steps, cautions. */
final class SheetParts {
    private static final int MOST_BOXES = 5;

    private final StringBuilder page;
    private int marks;

    SheetParts(StringBuilder page) {
        this.page = page;
    }

    /** Head of the document up to the first line of its body. */
    static String head(String title, PaperSize paper, String foot) {
        return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n"
                + "<meta charset=\"UTF-8\"/>\n<title>"
                + text(title)
                + "</title>\n<style>\n"
                + SheetStyle.of(paper, foot)
                + "</style>\n</head>\n<body>\n";
    }

    void keys(SheetContent.Keys keys) {
        page.append("<table class=\"keys\"><tr>\n");
        for (Key key : keys.figures()) {
            page.append("<td><div class=\"name\">").append(text(key.name())).append("</div><div class=\"figure\">");
            page.append(text(key.figure())).append("</div>");
            for (String under : key.under()) {
                page.append("<div class=\"under\">").append(text(under)).append("</div>");
            }
            page.append("</td>\n");
        }
        page.append("</tr></table>\n");
        SheetContent.Verdict verdict = keys.gap();
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

    void facts(List<Fact> facts) {
        page.append("<table class=\"facts\">\n");
        for (Fact fact : facts) {
            page.append("<tr><td class=\"name\">").append(text(fact.name())).append("</td><td>");
            page.append(text(fact.text())).append("</td></tr>\n");
        }
        page.append("</table>\n");
    }

    void steps(List<Tick> steps) {
        page.append("<h2>Procedure</h2>\n<table class=\"steps\">\n<colgroup>");
        page.append("<col class=\"tick\"/><col class=\"count\"/><col/>");
        page.append("<col class=\"figure\"/><col class=\"note\"/></colgroup>\n");
        int count = 0;
        for (Tick step : steps) {
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

    void cautions(SheetContent.Cautions cautions) {
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
