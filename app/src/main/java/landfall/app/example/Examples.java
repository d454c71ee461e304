// SPDX-License-Identifier: Apache-2.0
package landfall.app.example;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import landfall.app.shell.Typed;
import landfall.cards.card.Flat;
import landfall.cards.words.Words;

/** The taps and fixtures of the invented shop. */
public final class Examples {
    /**
     * A tap and the fixture it is ground on.
     *
     * @param name what the worker at the bench would call it
     * @param typed the fields of both cards
     */
    public record Example(String name, String tapFile, String fixtureFile, Map<String, String> typed) {
        public Example {
            typed = Map.copyOf(typed);
        }

        /** The fields of the tap's card alone. */
        public Map<String, String> tap() {
            return Flat.read(text(tapFile)).orThrow();
        }

        /** The page that opens with this example. */
        public String address() {
            return Typed.address("/grind", new TreeMap<>(typed));
        }
    }

    private static final List<Example> ALL = List.of(
            of("half13", "tap-half-13-worn.json", "fixture-four-lobes.json"),
            of("m8", "tap-m8.json", "fixture-three-lobes.json"),
            of("m10left", "tap-m10-left-hand.json", "fixture-three-lobes.json"));

    private Examples() {}

    public static List<Example> all() {
        return ALL;
    }

    /** The text of a file of the invented shop. */
    public static String text(String file) {
        try (InputStream in = Examples.class.getResourceAsStream("/landfall/examples/" + file)) {
            if (in == null) {
                throw new IllegalStateException("the program is not whole, it lacks the example " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Example of(String key, String tap, String fixture) {
        Map<String, String> typed = new LinkedHashMap<>(Flat.read(text(tap)).orThrow());
        typed.putAll(Flat.read(text(fixture)).orThrow());
        typed.put("wear", "due");
        return new Example(Words.of("page.example." + key), tap, fixture, typed);
    }
}
