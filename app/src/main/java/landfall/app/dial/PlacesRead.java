// SPDX-License-Identifier: Apache-2.0
package landfall.app.dial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import landfall.app.shell.Typed;
import landfall.cards.readings.ReadingsCsv;
import landfall.cards.readings.Row;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.grind.Place;

/**
 * The places of the dial among the readings given.
 *
 * @param codes in the order in which they come
 */
public record PlacesRead(List<String> codes) {
    /** Another place that was read too. */
    public record Other(String name, String address) {}

    static PlacesRead of(Map<String, String> typed) {
        Answer<List<Row>> rows = ReadingsCsv.read(typed.getOrDefault("readings", ""));
        if (!(rows instanceof Answer.Of<List<Row>> of)) {
            return new PlacesRead(List.of());
        }
        return new PlacesRead(of.value().stream()
                .map(row -> row.place().orElse(Place.CHAMFER_STILL).code())
                .distinct()
                .toList());
    }

    /** What was typed, with the first place chosen where readings of several were given and none was asked for. */
    Map<String, String> chosen(Map<String, String> typed) {
        if (codes.size() < 2 || typed.containsKey("place")) {
            return typed;
        }
        Map<String, String> chosen = new LinkedHashMap<>(typed);
        chosen.put("place", codes.get(0));
        return chosen;
    }

    List<Other> others(Map<String, String> typed) {
        List<Other> others = new ArrayList<>();
        String here = Objects.requireNonNullElse(typed.get("place"), codes.isEmpty() ? "" : codes.get(0));
        Stream<String> rest = codes.stream().filter(code -> !code.equals(here));
        rest.forEach(code -> {
            Map<String, String> there = new LinkedHashMap<>(typed);
            there.put("place", code);
            others.add(new Other(Words.of("page.place." + code), Typed.address(DialPage.PATH, there)));
        });
        return others;
    }
}
