// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import landfall.sheets.paper.SheetContent.Fact;
import landfall.sheets.paper.SheetContent.Key;
import landfall.sheets.paper.SheetContent.Tick;
import landfall.sheets.paper.TappingContent.Line;

/** A tapping sheet as plain text, 80 columns, for a terminal or a printer without drawings. */
final class TappingText {
    private static final int COLUMNS = 80;
    private static final int NAME = 18;

    private final TappingContent content;
    private final String foot;
    private final StringBuilder text = new StringBuilder();

    TappingText(TappingContent content, String foot) {
        this.content = content;
        this.foot = foot;
    }

    String write() {
        wrap("", "Tapping sheet  " + content.heading().title());
        wrap("", content.heading().tap());
        wrap("", content.heading().fixture());
        text.append('\n');
        for (Key key : content.keys().figures()) {
            row(key.name(), key.figure() + (key.under().isEmpty() ? "" : "  (" + String.join("; ", key.under()) + ")"));
        }
        wrap("", content.keys().gap().word() + " " + content.keys().gap().why());
        title("Procedure");
        int count = 0;
        for (Tick tick : content.work().steps()) {
            String figure = tick.figure().isEmpty() ? "" : " " + tick.figure() + ".";
            wrap("    ", "[ ] %2d  %s%s%s".formatted(++count, tick.text(), figure, tick.note() ? " Read ______" : ""));
        }
        title("Figures");
        for (Fact fact : content.facts()) {
            row(fact.name(), fact.text());
        }
        title("Cautions");
        content.work().cautions().raised().forEach(caution -> wrap("  ", "! " + caution));
        content.work().cautions().always().forEach(caution -> wrap("  ", "- " + caution));
        title("Working in short");
        for (Line line : content.working()) {
            wrap("  ", line.means() + ": " + line.formula() + " = " + line.value() + " (" + line.source() + ")");
        }
        text.append('\n');
        wrap("", foot);
        return text.toString();
    }

    private void title(String words) {
        text.append('\n').append(words).append('\n');
    }

    private void row(String name, String words) {
        wrap(" ".repeat(NAME), ("%-" + NAME + "s%s").formatted(name, words));
    }

    /** Breaks between words; what goes on stands under the hang. */
    private void wrap(String hang, String words) {
        String rest = words;
        String indent = "";
        while (rest.length() + indent.length() > COLUMNS) {
            int room = COLUMNS - indent.length();
            int at = rest.lastIndexOf(' ', room);
            int end = at > room / 2 ? at : room;
            text.append(indent).append(rest.substring(0, end).stripTrailing()).append('\n');
            rest = rest.substring(end).stripLeading();
            indent = hang;
        }
        text.append(indent).append(rest).append('\n');
    }
}
