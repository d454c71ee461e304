// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Unit;
import landfall.quantity.UnitSystem;

/**
 * Set-ups as lines of CSV: number, fields that vary, results; figures in metric units with all their digits, an empty
 * cell where a set-up has no result.
 */
public final class SpreadCsv implements Closeable {
    private final SpreadSetup setup;
    private final Writer out;

    private SpreadCsv(SpreadSetup setup, Writer out) {
        this.setup = setup;
        this.out = out;
    }

    /**
     * Opens a file.
     *
     * @param before how many set-ups a stopped run has written to it already; what follows them is cut off
     * @throws IOException also when the file has fewer
     */
    public static SpreadCsv open(SpreadSetup setup, Path file, long before) throws IOException {
        if (before > 0) {
            cut(file, before + 1);
        }
        BufferedWriter out = before > 0
                ? Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.APPEND)
                : Files.newBufferedWriter(file, StandardCharsets.UTF_8);
        if (before == 0) {
            out.write(String.join(",", columns(setup)) + "\n");
        }
        return new SpreadCsv(setup, out);
    }

    private static void cut(Path file, long lines) throws IOException {
        long left = lines;
        long at = 0;
        try (var in = Files.newInputStream(file)) {
            byte[] part = new byte[1 << 16];
            for (int read = in.read(part); read > 0 && left > 0; read = in.read(part)) {
                for (int i = 0; i < read && left > 0; i++) {
                    at++;
                    left -= part[i] == '\n' ? 1 : 0;
                }
            }
        }
        if (left > 0) {
            throw new IOException("it has fewer set-ups than the stopped run had made");
        }
        try (RandomAccessFile whole = new RandomAccessFile(file.toFile(), "rw")) {
            whole.setLength(at);
        }
    }

    /** Names of the columns, each with its unit: {@code swivel_deg}. */
    public static List<String> columns(SpreadSetup setup) {
        List<String> columns = new ArrayList<>(List.of("number"));
        setup.varied().forEach(varied -> columns.add(varied.path() + sign(varied.unit(), varied.isWords())));
        setup.watched().forEach(watched -> columns.add(watched.path() + sign(watched.unit(), false)));
        return columns;
    }

    private static String sign(Unit unit, boolean isWords) {
        return unit == Unit.PURE || isWords ? "" : "_" + unit.sign(UnitSystem.METRIC);
    }

    public void write(long first, double[][] inputs, double[][] results) {
        StringBuilder lines = new StringBuilder();
        for (int k = 0; k < results[0].length; k++) {
            lines.append(first + k);
            for (int input = 0; input < inputs.length; input++) {
                Varied varied = setup.varied().get(input);
                double value = inputs[input][k];
                lines.append(',').append(varied.isWords() ? quoted(varied.text(value)) : Double.toString(value));
            }
            for (double[] result : results) {
                lines.append(',').append(Double.isNaN(result[k]) ? "" : Double.toString(result[k]));
            }
            lines.append('\n');
        }
        try {
            out.write(lines.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String quoted(String text) {
        return text.matches("[^,\"\\r\\n]*") ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
