// SPDX-License-Identifier: Apache-2.0
package landfall.cards;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import landfall.cards.card.Flat;

/** The invented shop's example cards, read from where a reader finds them. */
public final class Cards {
    private static final Path HOUSE = Path.of(System.getProperty("landfall.house", ".."));

    private Cards() {}

    public static Path house() {
        return HOUSE;
    }

    public static String text(String name) {
        try {
            return Files.readString(HOUSE.resolve("examples").resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The fields of several cards together, as a question takes them. */
    public static Map<String, String> typed(String... names) {
        Map<String, String> all = new LinkedHashMap<>();
        for (String name : names) {
            all.putAll(Flat.read(text(name)).orThrow());
        }
        return all;
    }
}
