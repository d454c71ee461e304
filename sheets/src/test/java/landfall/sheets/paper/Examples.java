// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import landfall.cards.ask.GrindAsk;
import landfall.cards.card.Flat;
import landfall.grind.GrindSetup;

/** Set-ups of the invented shop's example cards, read as the command line reads them. */
public final class Examples {
    private static final Path HOUSE = Path.of(System.getProperty("landfall.house", ".."));

    private Examples() {}

    static GrindSetup setup(String tap, String fixture) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String name : new String[] {tap, fixture}) {
            try {
                String card = Files.readString(HOUSE.resolve("examples").resolve(name + ".json"));
                typed.putAll(Flat.read(card).orThrow());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return new GrindAsk().setup(typed).orThrow().value();
    }

    public static GrindSetup wornHalfInch() {
        return setup("tap-half-13-worn", "fixture-four-lobes");
    }

    public static GrindSetup metric() {
        return setup("tap-m8", "fixture-three-lobes");
    }

    public static GrindSetup leftHand() {
        return setup("tap-m10-left-hand", "fixture-three-lobes");
    }
}
