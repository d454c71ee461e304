// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import landfall.sheets.draw.Typeface;

/** The style of a printed sheet: only what a CSS 2.1 renderer and a browser both know. */
final class SheetStyle {
    private SheetStyle() {}

    static String of(PaperSize paper, String foot) {
        return """
                @page { size: %1$s; margin: 9mm 12mm 12mm 12mm;
                  @bottom-left { content: "%3$s"; font: 8.5pt '%2$s'; }
                  @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8.5pt '%2$s'; } }
                * { margin: 0; padding: 0; }
                body { font-family: '%2$s', sans-serif; font-size: 9pt; line-height: 1.2; color: #000; background: #fff; }
                h1 { font-size: 19pt; line-height: 1.1; }
                h2 { font-size: 11pt; border-bottom: 0.5mm solid #000; margin: 2mm 0 0.8mm 0; page-break-after: avoid; }
                table { border-collapse: collapse; width: 100%%; }
                td, th { vertical-align: top; text-align: left; }
                .head { border-bottom: 0.7mm solid #000; padding-bottom: 1mm; }
                .head .right { text-align: right; width: 60mm; }
                .keys { margin: 1.6mm 0; }
                .keys td { border: 0.25mm solid #000; padding: 0.8mm 1.6mm 1mm 1.6mm; }
                .keys .figure { font-size: 16pt; font-weight: bold; line-height: 1.15; white-space: nowrap; }
                .mark { width: 9mm; }
                .pictures td { padding: 0; }
                .dials td { width: 25%%; text-align: center; }
                .readings { table-layout: fixed; }
                .readings .first { width: 20mm; }
                .readings th, .readings td { border: 0.25mm solid #000; text-align: right; padding: 0.4mm 0.8mm; white-space: nowrap; }
                .readings th { text-align: center; font-size: 8.5pt; line-height: 1.1; padding: 0.4mm; white-space: normal; }
                .readings .angle { font-weight: bold; white-space: nowrap; }
                .readings .divide { border-left: 0.6mm solid #000; }
                .box { display: inline-block; width: 3.2mm; height: 3.2mm; border: 0.3mm solid #000; margin-right: 0.8mm; }
                .facts { table-layout: fixed; }
                .facts td { padding: 0.3mm 0 0.3mm 0; }
                .facts .name { width: 17mm; font-weight: bold; }
                .steps { table-layout: fixed; }
                .steps td { padding: 0.4mm 0; border-bottom: 0.1mm solid #000; }
                .steps tr { page-break-inside: avoid; }
                .steps .tick { width: 5mm; padding-top: 0.6mm; }
                .steps .count { width: 6mm; font-weight: bold; }
                .steps .figure { width: 19mm; font-weight: bold; text-align: right; white-space: nowrap; }
                .steps .note { width: 20mm; padding-left: 2mm; white-space: nowrap; }
                .notes { font-size: 8.5pt; padding-top: 0.6mm; }
                .columns { table-layout: fixed; font-size: 8.5pt; }
                .columns td { padding: 0.6mm 3mm 0 0; }
                .next { page-break-before: always; }
                """.formatted(paper.css(), Typeface.FAMILY, quoted(foot));
    }

    /** As a CSS string: quotes, backslashes, and what would end the style element are written as escapes. */
    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder();
        text.chars().forEach(c -> {
            if (c == '"' || c == '\\' || c == '<' || c == '&' || c < ' ') {
                quoted.append("\\%06x".formatted(c));
            } else {
                quoted.append((char) c);
            }
        });
        return quoted.toString();
    }
}
