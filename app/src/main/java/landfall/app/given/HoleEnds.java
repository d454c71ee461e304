// SPDX-License-Identifier: Apache-2.0
package landfall.app.given;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.words.Words;

/**
 * Blind or through as one choice on a page. The questions have a field for each; an address with either is understood.
 */
public final class HoleEnds {
    public static final String PATH = "end";
    private static final List<String> ENDS = List.of("blind", "through");

    private HoleEnds() {}

    /** What was typed, with the choice put into the question's own fields. */
    public static Map<String, String> spelled(Map<String, String> typed) {
        String end = typed.get(PATH);
        if (end == null) {
            return typed;
        }
        Map<String, String> spelled = new LinkedHashMap<>(typed);
        if (ENDS.contains(end)) {
            ENDS.forEach(spelled::remove);
            spelled.remove(PATH);
            spelled.put(end, "yes");
        }
        return spelled;
    }

    /** The choice as a cell; spelled: what was typed, by the question's fields. */
    public static Cell cell(Map<String, String> spelled) {
        String value = ENDS.stream()
                .filter(end -> spelled.getOrDefault(end, "").matches("(?i)y|yes|true|1"))
                .findFirst()
                .orElse("");
        return new Cell(
                Cell.id(PATH),
                PATH,
                Words.of("page.end"),
                Words.of("page.end.means"),
                value,
                "",
                "",
                ENDS,
                Words.of("page.given.usual"));
    }
}
