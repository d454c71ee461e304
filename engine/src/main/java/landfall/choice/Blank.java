// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.thread.ScrewThread;

/**
 * A tap blank of a usual series.
 *
 * @param build short (inch; ISO 529) or long (DIN 371 and 376)
 * @param remembered whether its figures are from memory
 */
public record Blank(UnitSystem system, String build, Length major, Size size, boolean remembered) {
    private static final String RESOURCE = "/choice/blanks.csv";
    private static final double SAME_MM = 0.02;

    /** Lengths over all, of thread, of the square; shank diameter. */
    public record Size(Length overall, Length thread, Length square, Length shank) {}

    private static final class Held {
        static final List<Blank> ALL = read();
    }

    /** The blank of a thread's diameter: for a machine the long one where it is held. */
    public static Optional<Blank> of(ScrewThread thread, boolean byHand) {
        List<Blank> fitting = Held.ALL.stream()
                .filter(blank -> blank.system == thread.family().system())
                .filter(blank -> Math.abs(blank.major.mm() - thread.major().mm()) < SAME_MM)
                .toList();
        return fitting.stream()
                .filter(blank -> blank.build.equals(byHand ? "short" : "long"))
                .findFirst()
                .or(() -> fitting.stream().findFirst());
    }

    private static List<Blank> read() {
        try (InputStream in = Blank.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("missing resource " + RESOURCE);
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> row(line.split(",", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Blank row(String[] cells) {
        UnitSystem system = cells[0].equals("inch") ? UnitSystem.INCH : UnitSystem.METRIC;
        DoubleFunction<Length> unit = system == UnitSystem.INCH ? Length::ofInch : Length::ofMm;
        return new Blank(
                system,
                cells[1],
                unit.apply(Double.parseDouble(cells[3])),
                new Size(
                        unit.apply(Double.parseDouble(cells[4])),
                        unit.apply(Double.parseDouble(cells[5])),
                        unit.apply(Double.parseDouble(cells[6])),
                        unit.apply(Double.parseDouble(cells[7]))),
                cells[8].equals("memory"));
    }
}
