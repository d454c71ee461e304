// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.List;
import landfall.sheets.draw.Typeface;

/** Labels to cut out, three across, each with its mark in words and as a square code. */
public final class LabelSheet {
    private static final int ACROSS = 3;
    private static final double CODE_MM = 24;
    private static final String STYLE = """
            @page { size: PAPER; margin: 10mm; }
            body { margin: 0; font-family: FONT; color: #000; }
            table { border-collapse: collapse; }
            td.label { width: 60mm; height: 28mm; border: 0.2mm dashed #777; padding: 0; }
            td.label table { width: 58mm; }
            tr { page-break-inside: avoid; }
            td.code { width: 26mm; padding: 1mm; vertical-align: middle; }
            td.words { width: 31mm; vertical-align: middle; }
            .mark { font-size: 13pt; font-weight: bold; }
            .what { font-size: 9pt; }
            """;

    private LabelSheet() {}

    /** XHTML with its drawings inside. */
    public static String html(List<Label> labels, PaperSize paper) {
        StringBuilder page =
                new StringBuilder("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n");
        page.append("<head><meta charset=\"UTF-8\"/><title>Labels</title>\n<style>\n")
                .append(STYLE.replace("PAPER", paper.css()).replace("FONT", Typeface.FAMILY))
                .append("</style></head>\n<body>\n<table>\n");
        for (int first = 0; first < labels.size(); first += ACROSS) {
            page.append("<tr>\n");
            for (int i = first; i < first + ACROSS; i++) {
                page.append(i < labels.size() ? cell(labels.get(i), i) : "<td></td>")
                        .append('\n');
            }
            page.append("</tr>\n");
        }
        return page.append("</table>\n</body></html>\n").toString();
    }

    public static byte[] pdf(List<Label> labels, PaperSize paper) {
        return Press.print(html(labels, paper));
    }

    private static String cell(Label label, int number) {
        return "<td class=\"label\"><table><tr><td class=\"code\">"
                + SquareCode.svg("code-" + number, label.address(), CODE_MM)
                + "</td><td class=\"words\"><div class=\"mark\">"
                + text(label.mark())
                + "</div><div class=\"what\">"
                + text(label.what())
                + "</div></td></tr></table></td>";
    }

    private static String text(String plain) {
        return plain.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
