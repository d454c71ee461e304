// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import landfall.quantity.Length;
import landfall.quantity.Rounding;
import org.jspecify.annotations.Nullable;

/** Published rows of limits, and their cells held against computed ones to the last printed digit. */
public final class ReferenceRows {
    private final Map<String, int[]> agreement = new LinkedHashMap<>();
    private final List<String> parted = new ArrayList<>();

    /** The rows of a reference table as maps from column to cell; the head's columns line names the columns. */
    public static List<Map<String, String>> of(String name) {
        try (var stream = Objects.requireNonNull(ReferenceRows.class.getResourceAsStream("/reference/" + name))) {
            List<String> lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
                    .lines()
                    .toList();
            String head = lines.stream()
                    .filter(line -> line.startsWith("# columns:"))
                    .findFirst()
                    .orElseThrow();
            String[] columns = head.substring(10).strip().split(",");
            return lines.stream()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> row(columns, line.split(",", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> row(String[] columns, String[] cells) {
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < columns.length; i++) {
            row.put(columns[i], cells[i]);
        }
        return row;
    }

    /** Compares one printed cell, if there is one, with a computed figure in the cell's unit. */
    public void cell(String place, String column, String printed, double computed) {
        if (printed.isEmpty()) {
            return;
        }
        BigDecimal published = new BigDecimal(printed);
        BigDecimal ours = Rounding.decimal(computed).setScale(published.scale(), RoundingMode.HALF_UP);
        int[] count = agreement.computeIfAbsent(column, any -> new int[2]);
        count[1]++;
        if (ours.compareTo(published) == 0) {
            count[0]++;
        } else {
            parted.add(place + " " + column + " printed " + printed + " computed "
                    + Rounding.decimal(computed)
                            .setScale(4, RoundingMode.HALF_UP)
                            .stripTrailingZeros()
                            .toPlainString());
        }
    }

    public static double inch(@Nullable Length length) {
        return Objects.requireNonNull(length).inch();
    }

    public static double mm(@Nullable Length length) {
        return Objects.requireNonNull(length).mm();
    }

    /** Column by column, {@code agreeing/printed}. */
    public Map<String, String> agreement() {
        Map<String, String> shown = new LinkedHashMap<>();
        agreement.forEach((column, count) -> shown.put(column, count[0] + "/" + count[1]));
        return shown;
    }

    public List<String> parted() {
        return parted;
    }

    /** Share of all printed cells that agree. */
    public double share() {
        int agreeing = agreement.values().stream().mapToInt(count -> count[0]).sum();
        int all = agreement.values().stream().mapToInt(count -> count[1]).sum();
        return (double) agreeing / all;
    }
}
