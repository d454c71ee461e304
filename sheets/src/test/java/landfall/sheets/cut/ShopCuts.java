// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.cut;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import landfall.cards.ask.CutAsk;
import landfall.cards.card.Flat;
import landfall.cut.CutForecast;
import landfall.sheets.figure.Figures;
import landfall.tap.Tap;

/** Cuts of the invented shop, each of another kind, asked as the command line asks them. */
public final class ShopCuts {
    private static final Path HOUSE = Path.of(System.getProperty("landfall.house", ".."));

    private ShopCuts() {}

    /** A tap and what it is to cut; typed: what a person gives for it. */
    public record Cut(String name, Map<String, String> typed) {
        public Tap tap() {
            return new CutAsk().tap(typed).orThrow();
        }

        public CutForecast forecast() {
            return new CutAsk().forecast(typed).orThrow().value();
        }

        /** With the hole that the same call-out, depth and tap ask for, where one is found. */
        public Tapping tapping() {
            return Tappings.of(typed).orThrow();
        }

        public Figures figures() {
            return new Figures(tap().thread().family().system());
        }

        @Override
        public String toString() {
            return name;
        }
    }

    /** An example card with changes: path and text in turn; an empty text takes the field away. */
    public static Cut of(String card, String... changes) {
        try {
            String text = Files.readString(HOUSE.resolve("examples").resolve(card + ".json"));
            Map<String, String> typed = new LinkedHashMap<>(Flat.read(text).orThrow());
            for (int i = 0; i < changes.length; i += 2) {
                typed.put(changes[i], changes[i + 1]);
            }
            typed.values().removeIf(String::isEmpty);
            return new Cut(card + " " + String.join(" ", changes), typed);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Cut blind() {
        return of("tap-m8", "cuts", "304", "hole", "6.8 mm", "depth", "16 mm", "blind", "yes");
    }

    public static Cut halfInch() {
        return of("tap-half-13-worn", "hole", "27/64", "depth", "3/4 in", "through", "yes");
    }

    public static Cut leftHand() {
        return of("tap-m10-left-hand", "hole", "8.5 mm", "depth", "12 mm", "through", "yes");
    }

    /** Bottoming, with spiral flutes that bring the chips out. */
    public static Cut bottoming() {
        return of(
                "tap-m8",
                "cuts",
                "6061-T6",
                "hole",
                "6.9 mm",
                "depth",
                "12 mm",
                "blind",
                "yes",
                "flutes.kind",
                "spiral-right",
                "flutes.helix",
                "35 deg",
                "chamfer.angle",
                "22 deg");
    }

    /** Two flutes of one arc each. */
    public static Cut spiralPoint() {
        return of(
                "tap-m8",
                "cuts",
                "1018",
                "hole",
                "6.8 mm",
                "depth",
                "20 mm",
                "through",
                "yes",
                "flutes.kind",
                "spiral-point",
                "flutes.count",
                "2",
                "land.width",
                "",
                "flutes.rake",
                "",
                "flutes.core",
                "4 mm",
                "flutes.radius",
                "2.6 mm");
    }

    /** So worn, in so hard a steel, that torque and strength meet. */
    public static Cut tooMuch() {
        return of("tap-m8", "cuts", "304", "hole", "6.65 mm", "depth", "24 mm", "blind", "yes", "wear", "0.9 mm");
    }

    public static Cut inserts() {
        return of(
                "tap-m8",
                "thread",
                "STI M6x1-5H",
                "cuts",
                "6061-T6",
                "hole",
                "6.3 mm",
                "depth",
                "9 mm",
                "through",
                "yes",
                "chamfer.pointDiameter",
                "6.0 mm",
                "flutes.core",
                "3 mm",
                "flutes.radius",
                "1.9 mm",
                "land.width",
                "2.3 mm",
                "limit.pitchMin",
                "",
                "limit.pitchMax",
                "",
                "least.pitchDiameter",
                "");
    }

    public static Cut twoStarts() {
        return of(
                "tap-m8",
                "thread",
                "M8xPh2.5P1.25-6H",
                "cuts",
                "1018",
                "hole",
                "6.8 mm",
                "depth",
                "10 mm",
                "through",
                "yes");
    }

    public static Stream<Cut> all() {
        return Stream.of(
                blind(), halfInch(), leftHand(), bottoming(), spiralPoint(), tooMuch(), inserts(), twoStarts());
    }
}
