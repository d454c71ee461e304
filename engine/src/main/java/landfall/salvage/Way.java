// SPDX-License-Identifier: Apache-2.0
package landfall.salvage;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A way of getting a broken tap out, as the trade knows it.
 *
 * @param code stable name
 * @param how it is done
 * @param needs what must be there
 * @param cost time and tools
 * @param risk what can go wrong
 */
public record Way(String code, String name, String how, String needs, String cost, String risk) {
    private static final String RESOURCE = "/salvage/ways.csv";

    private static final class Held {
        static final List<Way> ALL = load();
    }

    public static List<Way> all() {
        return Held.ALL;
    }

    private static List<Way> load() {
        try (InputStream in = Way.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("missing resource " + RESOURCE);
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> line.split(Pattern.quote("|"), -1))
                    .map(cells -> new Way(cells[0], cells[1], cells[2], cells[3], cells[4], cells[5]))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
