// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Length;
import landfall.quantity.Rounding;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * How much larger than its drill a drilled hole comes out, by a remembered table for steel and cast iron.
 *
 * <p>Straight between the rows; under the first and over the last the figure of that row stays, and the answer says so.
 * The printed formula is made from the table, so that the figures stand once: it is a sum of ramps in inches.
 */
final class Oversize {
    private static final String RESOURCE = "/hole/drill-oversize.csv";
    private static final Source TABLE = Source.of("memory", "oversize of drilled holes, handbook table after tests");

    static final Oversize LEAST = new Oversize(1, "least oversize of the drilled hole, well ground drill");
    static final Oversize MEAN = new Oversize(2, "mean oversize of the drilled hole");
    static final Oversize GREATEST = new Oversize(3, "greatest usual oversize of the drilled hole");

    private final double[] drills;
    private final double[] over;
    private final String means;

    private Oversize(int column, String means) {
        List<double[]> rows = rows();
        drills = rows.stream().mapToDouble(row -> row[0]).toArray();
        over = rows.stream().mapToDouble(row -> row[column]).toArray();
        this.means = means;
    }

    /** Oversize in inches, the unit of the table. */
    double inches(Length drill) {
        double sum = over[0];
        for (int i = 1; i < drills.length; i++) {
            double ramp = (drill.inch() - drills[i - 1]) / (drills[i] - drills[i - 1]);
            sum += (over[i] - over[i - 1]) * Math.min(Math.max(ramp, 0), 1);
        }
        return sum;
    }

    /** The printed formula: {@code symbol} from the drill called {@code drill}. */
    Rule rule(String symbol, String drill) {
        StringBuilder formula = new StringBuilder(number(over[0]));
        for (int i = 1; i < drills.length; i++) {
            double step = over[i] - over[i - 1];
            if (Math.abs(step) > 1e-12) {
                formula.append(" + %s*min(max((%s/25.4 - %s)/%s, 0), 1)"
                        .formatted(number(step), drill, number(drills[i - 1]), number(drills[i] - drills[i - 1])));
            }
        }
        return new Rule(symbol, formula.toString(), "in", TABLE, Trust.ESTIMATE, means);
    }

    /** Whether the table was tested on drills of this size. */
    static boolean covers(Length drill) {
        double inch = drill.inch();
        return inch >= MEAN.drills[0] - 1e-9 && inch <= MEAN.drills[MEAN.drills.length - 1] + 1e-9;
    }

    private static String number(double value) {
        BigDecimal plain = Rounding.decimal(value).stripTrailingZeros();
        return plain.toPlainString();
    }

    private static List<double[]> rows() {
        List<double[]> rows = new ArrayList<>();
        try (InputStream in = Oversize.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("missing resource " + RESOURCE);
            }
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> java.util.Arrays.stream(line.split(","))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .forEach(rows::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }
}
