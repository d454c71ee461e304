// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.body;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import landfall.cards.ask.GrindAsk;
import landfall.cards.card.FixtureCard;
import landfall.cards.card.Flat;
import landfall.cards.card.TapCard;
import landfall.envelope.ChamferGround;
import landfall.envelope.Errors;
import landfall.grind.GrindSetup;
import landfall.solid.TapBody;

/** The invented shop's M8 tap on its three-lobe cam, as a body. */
final class Bodies {
    private Bodies() {}

    static GrindSetup setup() {
        return new GrindAsk().setup(typed()).orThrow().value();
    }

    static Map<String, String> typed() {
        Map<String, String> typed = new HashMap<>();
        typed.putAll(Flat.read(text("tap-m8.json"), TapCard.FORM).orThrow());
        Flat.read(text("fixture-three-lobes.json"), FixtureCard.FORM)
                .orThrow()
                .forEach((path, value) -> typed.put(path, value));
        return typed;
    }

    static TapBody before() {
        return TapBody.of(setup().tap(), TapBody.USUAL_ERROR).orThrow();
    }

    static TapBody ground() {
        GrindSetup setup = setup();
        return TapBody.ground(setup, ChamferGround.of(setup, Errors.NONE), TapBody.USUAL_ERROR)
                .orThrow();
    }

    private static String text(String example) {
        try {
            return Files.readString(Path.of("..", "examples", example));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
