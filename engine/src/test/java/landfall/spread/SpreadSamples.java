// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Plans and models that several tests run. */
final class SpreadSamples {
    static final Law CIRCLE = new Law.Uniform(-Math.PI, Math.PI);

    private SpreadSamples() {}

    static Plan plan(long seed, long samples, long rows, Law... laws) {
        return new Plan(seed, samples, rows, List.of(laws), List.of(Within.ANY));
    }

    /** One result, of one set-up at a time. */
    static Model of(ToDoubleFunction<double[]> function) {
        return (inputs, results, refused) -> {
            for (int k = 0; k < results[0].length; k++) {
                double[] x = new double[inputs.length];
                for (int i = 0; i < x.length; i++) {
                    x[i] = inputs[i][k];
                }
                results[0][k] = function.applyAsDouble(x);
                if (Double.isNaN(results[0][k])) {
                    refused.accept("no figure");
                }
            }
        };
    }

    /** The function of Ishigami and Homma with a = 7, b = 0.1. */
    static double ishigami(double[] x) {
        return Math.sin(x[0]) + 7 * Math.pow(Math.sin(x[1]), 2) + 0.1 * Math.pow(x[2], 4) * Math.sin(x[0]);
    }

    static byte[] bits(Summary summary) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            summary.write(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    static Summary run(Plan plan, Model model, int threads) {
        return new Run(plan, model, threads).go(Run.Watch.NONE);
    }

    static List<Law> three() {
        return Collections.nCopies(3, CIRCLE);
    }
}
