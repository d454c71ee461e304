// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import landfall.sheets.draw.Drawing;
import landfall.sheets.paper.SheetContent.After;
import landfall.sheets.paper.SheetContent.Measure;

/** Lays the leaf for afterwards out as XHTML, for the end of a sheet. */
final class AfterPage {
    private AfterPage() {}

    static String of(String tap, After after) {
        StringBuilder page = new StringBuilder("<div class=\"next\"></div>\n<h2>");
        page.append(SheetParts.text(tap)).append(", after the grind: measure</h2>\n");
        page.append("<table class=\"measures\">\n<colgroup><col class=\"count\"/><col/><col class=\"target\"/>");
        page.append(
                "<col class=\"blanks\"/><col class=\"good\"/></colgroup>\n<tr><th></th><th>what, and with what</th>");
        page.append("<th>target and tolerance</th><th>read</th><th>good</th></tr>\n");
        int count = 0;
        for (Measure measure : after.measures()) {
            count++;
            page.append("<tr><td class=\"count\">").append(count).append("</td><td>");
            page.append(SheetParts.text(measure.what())).append("</td><td>").append(SheetParts.text(measure.target()));
            page.append("</td><td class=\"blanks\">").append(blanks(measure.blanks()));
            page.append("</td><td class=\"good\"><span class=\"box\"></span></td></tr>\n");
        }
        page.append("</table>\n<p class=\"notes\">Measure in another set-up than the one it was ground in. Lands are ");
        page.append("counted backwards from land 1.</p>\n");
        left(after, page);
        return page.toString();
    }

    /** One line to write on, or one for each land with its number. */
    private static String blanks(int count) {
        if (count == 1) {
            return "__________";
        }
        StringBuilder blanks = new StringBuilder();
        for (int land = 1; land <= count; land++) {
            blanks.append("<span class=\"blank\">").append(land).append(" _______</span> ");
        }
        return blanks.toString();
    }

    private static void left(After after, StringBuilder page) {
        page.append("<h2>Sharpenings left</h2>\n");
        Drawing life = after.life();
        if (life != null) {
            page.append("<table class=\"pictures\"><tr><td class=\"life\">")
                    .append(life.svg())
                    .append("</td><td>");
            for (String sentence : after.left()) {
                page.append("<p class=\"said\">")
                        .append(SheetParts.text(sentence))
                        .append("</p>");
            }
            page.append(
                    "<p class=\"said\">Counted at the wear of a tap that is due, each time; geometry only. Chips and");
            page.append(" unequal lands end most taps sooner (common practice).</p></td></tr></table>\n");
        }
        page.append("<table class=\"record\"><tr><td>sharpening no. ______</td><td>chamfer / face / cut off</td>");
        page.append("<td>thread left ___________</td><td>ground by ____________</td><td>date __________</td></tr>");
        page.append("</table>\n");
    }
}
