// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import landfall.quantity.Band;

/** The small tables under {@code /cut}: rows of cells parted by semicolons, the first cells being the key. */
enum CutTable {
    CALIBRATION("calibration"),
    FLUIDS("fluids"),
    TAP_STRENGTH("tap-strength"),
    BULK("bulk"),
    HOLDERS("holders");

    private final String file;

    CutTable(String name) {
        this.file = "/cut/" + name + ".csv";
    }

    /** The cells after the key; empty when no row has it. */
    Optional<List<String>> row(String... key) {
        try (InputStream in = CutTable.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("missing resource " + file);
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> Arrays.asList(line.split(";", -1)))
                    .filter(cells -> cells.subList(0, key.length).equals(List.of(key)))
                    .findFirst()
                    .map(cells -> cells.subList(key.length, cells.size()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A row that must be there. */
    List<String> need(String... key) {
        return row(key).orElseThrow(() -> new IllegalStateException("no row " + String.join(";", key) + " in " + file));
    }

    /** Three cells from a place on, as an estimate. */
    static Band band(List<String> cells, int from) {
        return new Band(number(cells, from), number(cells, from + 1), number(cells, from + 2));
    }

    static double number(List<String> cells, int at) {
        return Double.parseDouble(cells.get(at));
    }
}
