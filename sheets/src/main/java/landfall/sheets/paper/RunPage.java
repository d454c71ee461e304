// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.List;
import landfall.sheets.paper.SheetContent.Run;

/** Lays out as XHTML what a set-up leaves when it is run: a table of the lands, one of them unrolled. */
final class RunPage {
    private RunPage() {}

    static String of(String tap, Run run) {
        StringBuilder page = new StringBuilder("<div class=\"next\"></div>\n<h2>");
        page.append(SheetParts.text(tap)).append(", what to find: run with a wheel of its size</h2>\n");
        page.append("<table class=\"run\"><tr>");
        run.heads()
                .forEach(head ->
                        page.append("<th>").append(SheetParts.text(head)).append("</th>"));
        page.append("</tr>\n");
        for (List<String> land : run.lands()) {
            page.append("<tr>");
            land.forEach(figure ->
                    page.append("<td>").append(SheetParts.text(figure)).append("</td>"));
            page.append("</tr>\n");
        }
        page.append("</table>\n");
        for (String sentence : run.said()) {
            page.append("<p class=\"said\">").append(SheetParts.text(sentence)).append("</p>");
        }
        page.append("<p class=\"wide\">").append(run.map().svg()).append("</p>\n");
        return page.toString();
    }
}
