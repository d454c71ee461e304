// SPDX-License-Identifier: Apache-2.0
package landfall.material;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import landfall.quantity.Angle;

/**
 * How a material behaves under a tap: its chips, its rake, whether it hardens. Common practice without a source.
 *
 * @param isoGroup P, M, K, N, S
 * @param hard over 35 HRC
 * @param chipWords the chip form as the list says it
 * @param canBeFormed soft and tough enough for a forming tap
 */
public record Tapping(
        String isoGroup,
        boolean hard,
        Chips chips,
        String chipWords,
        Rake rake,
        boolean workHardens,
        boolean canBeFormed) {
    private static final String RESOURCE = "/material/tapping.csv";

    /** What the chips do. */
    public enum Chips {
        LONG,
        MEDIUM,
        SHORT,
        POWDER;

        /** Chips that break crumble in a straight flute; others must be led somewhere. */
        public boolean breakUp() {
            return this == SHORT || this == POWDER;
        }
    }

    /** A range of radial rake. */
    public record Rake(Angle least, Angle greatest) {}

    private static final class Held {
        static final Map<String, Tapping> BY_ID = read();
    }

    /** Empty when the list has no row for the material. */
    public static Optional<Tapping> of(WorkMaterial material) {
        return Optional.ofNullable(Held.BY_ID.get(material.id()));
    }

    private static Map<String, Tapping> read() {
        Map<String, Tapping> rows = new HashMap<>();
        try (InputStream in = Tapping.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("missing resource " + RESOURCE);
            }
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> line.split(";", -1))
                    .forEach(cells -> rows.put(cells[0], row(cells)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Map.copyOf(rows);
    }

    private static Tapping row(String[] cells) {
        return new Tapping(
                cells[1],
                cells[2].equals("yes"),
                Chips.valueOf(cells[3].toUpperCase(java.util.Locale.ROOT)),
                cells[8],
                new Rake(Angle.ofDeg(Double.parseDouble(cells[4])), Angle.ofDeg(Double.parseDouble(cells[5]))),
                cells[6].equals("yes"),
                cells[7].equals("yes"));
    }
}
