// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

import java.util.List;
import java.util.Locale;

/**
 * One cause of a symptom, as the trade knows it.
 *
 * @param symptom code of the symptom
 * @param check that tells it from the others
 * @param likelihood before anything is known of this tap and hole
 * @param page noun of the question that helps to mend it; may be empty
 * @param fact name of what could be known that speaks for or against it; may be empty
 */
public record Cause(
        String symptom, String cause, String check, String mend, Likelihood likelihood, String page, String fact) {
    private static final class Held {
        static final List<Cause> ALL = Lore.rows("causes", "|").stream()
                .map(cells -> new Cause(
                        cells[0],
                        cells[1],
                        cells[2],
                        cells[3],
                        Likelihood.valueOf(cells[4].toUpperCase(Locale.ROOT)),
                        cells[5],
                        cells[6]))
                .toList();
    }

    public static List<Cause> all() {
        return Held.ALL;
    }

    static List<Cause> of(Symptom symptom) {
        return all().stream()
                .filter(cause -> cause.symptom.equals(symptom.code()))
                .toList();
    }
}
