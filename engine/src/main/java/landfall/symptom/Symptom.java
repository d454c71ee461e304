// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What is seen.
 *
 * @param code stable name
 * @param words what it is
 * @param others what it is called as well
 */
public record Symptom(String code, String words, List<String> others) {
    private static final class Held {
        static final List<Symptom> ALL = Lore.rows("symptoms", ";").stream()
                .map(cells -> new Symptom(cells[0], cells[1], List.of(cells[2].split("\\|"))))
                .toList();
    }

    public static List<Symptom> all() {
        return Held.ALL;
    }

    /** By its code or another name of it, in any case, with blanks or hyphens. */
    public static Optional<Symptom> named(String text) {
        String asked = text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
        return all().stream()
                .filter(symptom -> symptom.code.equals(asked) || symptom.others.contains(asked))
                .findFirst();
    }
}
