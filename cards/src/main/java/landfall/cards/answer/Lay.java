// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Plain text in columns: wrapping, padding, and decimals under each other. */
final class Lay {
    static final int WIDTH = 80;

    private Lay() {}

    /**
     * A text in lines of at most 80 columns, each after its indent; the first may have another head of the same width.
     */
    static List<String> wrap(String head, int indent, String text) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(pad(head, indent));
        boolean empty = true;
        for (String word : text.split(" ")) {
            if (!empty && columns(line) + 1 + columns(word) > WIDTH) {
                lines.add(line.toString().stripTrailing());
                line = new StringBuilder(" ".repeat(indent));
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        lines.add(line.toString().stripTrailing());
        return lines;
    }

    static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - columns(text)));
    }

    static String padLeft(String text, int width) {
        return " ".repeat(Math.max(0, width - columns(text))) + text;
    }

    static int columns(CharSequence text) {
        return (int) text.codePoints()
                .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
                .count();
    }

    /** A figure with the places of its unit; more when it would show as nothing. A minus before zero is not printed. */
    static String figure(double value, int places) {
        int shown = places;
        while (value != 0 && shown < 8 && Math.abs(value) < 0.5 * Math.pow(10, -shown)) {
            if (Math.abs(value) < 1e-9) {
                return figure(0, places);
            }
            shown++;
        }
        String text = String.format(Locale.ROOT, "%." + shown + "f", value);
        return text.matches("-0\\.?0*") ? text.substring(1) : text;
    }

    /** A figure padded on the left so that its decimal point stands in a column. */
    static String atPoint(String figure, int column) {
        int point = figure.indexOf('.');
        return padLeft(point < 0 ? figure : figure.substring(0, point), column)
                + (point < 0 ? "" : figure.substring(point));
    }
}
