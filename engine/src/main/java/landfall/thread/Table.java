// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A published table held as a resource: comma-separated rows under a head of {@code #} lines. */
public final class Table {
    private Table() {}

    /** The rows of {@code /thread/NAME.csv}, in order, each split at its commas. */
    public static List<List<String>> rows(String name) {
        return at("/thread/" + name + ".csv");
    }

    /** The rows of any resource of this form. */
    public static List<List<String>> at(String path) {
        try (InputStream stream = Table.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalStateException("table " + path + " is missing from the program");
            }
            return new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> List.of(line.split(",", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("table " + path, e);
        }
    }
}
