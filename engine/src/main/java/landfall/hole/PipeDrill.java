// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import landfall.quantity.Length;
import landfall.thread.CallOut;

/**
 * The straight hole that charts give for a taper pipe thread, tapped without a taper reamer.
 *
 * @param name of the drill, empty when the chart gives a diameter only
 * @param remembered whether the figure is from memory
 */
record PipeDrill(Length diameter, String name, boolean remembered) {
    private static final String RESOURCE = "/hole/pipe-drills.csv";

    private static final class Held {
        static final Map<String, PipeDrill> BY_THREAD = read();
    }

    /** Empty for sizes that no chart held names. */
    static Optional<PipeDrill> of(CallOut callOut) {
        return Optional.ofNullable(Held.BY_THREAD.get(callOut.normal().replace("-LH", "")));
    }

    /** As a mend says it. */
    String words() {
        return (name.isEmpty() ? "" : name + ", ") + diameter.words() + (remembered ? " (from memory)" : "");
    }

    private static Map<String, PipeDrill> read() {
        Map<String, PipeDrill> rows = new HashMap<>();
        try (InputStream in = PipeDrill.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("missing resource " + RESOURCE);
            }
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> line.split(",", -1))
                    .forEach(cells -> rows.put(
                            cells[0],
                            new PipeDrill(
                                    Length.ofMm(Double.parseDouble(cells[1])), cells[2], cells[3].equals("memory"))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Map.copyOf(rows);
    }
}
