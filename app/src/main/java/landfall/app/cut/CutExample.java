// SPDX-License-Identifier: Apache-2.0
package landfall.app.cut;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.app.example.Examples;
import landfall.app.shell.Place;
import landfall.app.shell.Typed;
import landfall.cards.ask.CutAsk;
import landfall.cards.words.Words;

/**
 * A tap of the invented shop in a hole of it.
 *
 * @param name what the worker at the bench would call it
 */
public record CutExample(String name, String address) {
    private static final List<CutExample> ALL = List.of(
            of(1, "page.cut.example.m8", "cuts=304;hole=6.8 mm;depth=16 mm;blind=yes;wear=fresh"),
            of(0, "page.cut.example.half13", "hole=27/64;depth=3/4 in;through=yes"),
            of(2, "page.cut.example.m10left", "hole=8.5 mm;depth=15 mm;through=yes;drive=hand;wear=fresh"));

    public static List<CutExample> all() {
        return ALL;
    }

    private static CutExample of(int tap, String words, String cut) {
        Map<String, String> typed = new LinkedHashMap<>(Examples.all().get(tap).typed());
        typed.keySet().retainAll(new CutAsk().form().paths());
        typed.remove("name");
        for (String pair : cut.split(";")) {
            typed.put(pair.replaceFirst("=.*", ""), pair.replaceFirst(".*?=", ""));
        }
        return new CutExample(Words.of(words), Typed.address(Place.CUT.path(), typed));
    }
}
