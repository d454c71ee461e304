// SPDX-License-Identifier: Apache-2.0
package landfall.app.grind;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.app.shell.Place;
import landfall.app.shell.Typed;
import landfall.cards.ask.DialAsk;
import landfall.cards.ask.LifeAsk;
import landfall.cards.ask.Question;
import landfall.cards.words.Words;

/**
 * The questions that come after a set-up, with the same tap carried on.
 *
 * @param words what the person would ask
 */
public record Onward(String words, String address) {
    static List<Onward> of(Map<String, String> typed) {
        List<Onward> all = new ArrayList<>();
        all.add(to(new DialAsk(), Place.GRIND.path() + "/dial", typed));
        all.add(to(new LifeAsk(), Place.GRIND.path() + "/life", typed));
        return all;
    }

    private static Onward to(Question question, String path, Map<String, String> typed) {
        Map<String, String> carried = new LinkedHashMap<>(typed);
        carried.keySet().retainAll(question.form().paths());
        return new Onward(Words.of("page." + question.noun() + ".question"), Typed.address(path, carried));
    }
}
