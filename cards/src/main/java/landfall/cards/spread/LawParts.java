// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Parts the figures of a law: at each {@code ;}, at a comma that a blank follows, or, where neither stands, at the one
 * blank that has a figure on both sides ({@code 9deg 0.2deg}, {@code 9 deg 0.2 deg}).
 */
final class LawParts {
    private LawParts() {}

    static List<String> of(String told) {
        List<String> parts = trimmed(told.split(";|,\\s"));
        if (parts.size() != 1) {
            return parts;
        }
        List<Integer> blanks = new ArrayList<>();
        for (int i = 1; i + 1 < told.length(); i++) {
            if (told.charAt(i) == ' ' && beginsFigure(told.charAt(i + 1)) && told.charAt(i - 1) != ' ') {
                blanks.add(i);
            }
        }
        // 1 1/8 is one figure: a blank between bare digits and a fraction does not part
        blanks.removeIf(at ->
                Character.isDigit(told.charAt(at - 1)) && told.substring(at + 1).matches("\\d+/\\d+.*"));
        if (blanks.size() != 1) {
            return parts;
        }
        int at = blanks.get(0);
        return trimmed(told.substring(0, at), told.substring(at + 1));
    }

    private static boolean beginsFigure(char c) {
        return Character.isDigit(c) || c == '.' || c == '#';
    }

    private static List<String> trimmed(String... parts) {
        return Stream.of(parts)
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }
}
