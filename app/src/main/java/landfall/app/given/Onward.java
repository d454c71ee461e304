// SPDX-License-Identifier: Apache-2.0
package landfall.app.given;

import java.util.LinkedHashMap;
import java.util.Map;
import landfall.app.shell.Typed;
import landfall.cards.ask.Question;
import landfall.cards.words.Words;

/**
 * A question that may come next, with what was typed carried on as far as it has fields for it.
 *
 * @param words what the person would ask
 */
public record Onward(String words, String address) {
    public static Onward to(Question question, String path, Map<String, String> typed) {
        Map<String, String> carried = new LinkedHashMap<>(typed);
        carried.keySet().retainAll(question.form().paths());
        return new Onward(Words.of("page." + question.noun() + ".question"), Typed.address(path, carried));
    }
}
