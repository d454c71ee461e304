// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.quantity.Length;
import landfall.thread.Family;
import landfall.thread.ScrewThread;

/**
 * Widths of the tolerance zones of a thread gauge.
 *
 * @param pitch of its pitch diameter
 * @param major of its major diameter
 */
record GaugeTolerance(Length pitch, Length major) {
    static final GaugeTolerance NOT_HELD = new GaugeTolerance(Length.ZERO, Length.ZERO);

    private static final String RESOURCE = "/gauge/x-tolerances.csv";
    private static final double SMALL_INCH = 1.5;
    private static final double LARGE_INCH = 4;

    private record Row(double finest, double coarsest, double major, double small, double large) {}

    private static final class Held {
        static final List<Row> ROWS = read();
    }

    /** The X tolerance of an inch thread; empty when no table is held for this family, pitch or size. */
    static Optional<GaugeTolerance> of(ScrewThread thread) {
        if (thread.family() != Family.UNIFIED || thread.major().inch() > LARGE_INCH) {
            return Optional.empty();
        }
        double tpi = 1 / thread.pitch().inch();
        boolean small = thread.major().inch() <= SMALL_INCH;
        return Held.ROWS.stream()
                .filter(row -> tpi <= row.finest + 1e-6 && tpi >= row.coarsest - 1e-6)
                .filter(row -> small || !Double.isNaN(row.large))
                .findFirst()
                .map(row -> new GaugeTolerance(Length.ofInch(small ? row.small : row.large), Length.ofInch(row.major)));
    }

    private static List<Row> read() {
        List<Row> rows = new ArrayList<>();
        try (InputStream in = GaugeTolerance.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("missing resource " + RESOURCE);
            }
            var lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (!line.startsWith("#") && !line.isBlank()) {
                    String[] c = line.split(";", -1);
                    rows.add(new Row(number(c[0]), number(c[1]), number(c[2]), number(c[3]), number(c[4])));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(rows);
    }

    private static double number(String cell) {
        return cell.isBlank() ? Double.NaN : Double.parseDouble(cell);
    }
}
