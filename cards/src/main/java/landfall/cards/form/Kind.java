// SPDX-License-Identifier: Apache-2.0
package landfall.cards.form;

import java.util.Map;
import java.util.function.Function;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.UnitSystem;

/**
 * What a field can hold: how its text is read, how a program is told about it, how a person is.
 *
 * @param <T> what the text becomes
 * @param words what belongs here, such as {@code a length: 11.5 mm, 27/64, .4375, 6 thou}
 * @param reading the reader; the field of its findings is put in by the form
 * @param schema the JSON-schema fragment of a value
 */
public record Kind<T>(String words, Reading<T> reading, Map<String, Object> schema) {
    /** Reads a text; a bare decimal takes the system given. */
    @FunctionalInterface
    public interface Reading<T> {
        Answer<T> read(String text, UnitSystem bare);
    }

    /** Another kind made of this one's values. */
    public <U> Kind<U> then(Function<T, Answer<U>> next) {
        return new Kind<>(words, (text, bare) -> reading.read(text, bare).then(next), schema);
    }

    Answer<T> read(String field, String text, UnitSystem bare) {
        Answer<T> answer = reading.read(text, bare);
        return answer instanceof Answer.Refused<T> refused
                ? Answer.refused(refused.findings().stream()
                        .map(found -> placed(field, text, found))
                        .toList())
                : answer;
    }

    /** A finding that names a place inside the field, such as a line of readings, keeps it. */
    private static Finding placed(String field, String text, Finding found) {
        if (found.field().startsWith(field)) {
            return found;
        }
        return new Finding(field, found.given().isEmpty() ? text : found.given(), found.why(), found.mend());
    }
}
