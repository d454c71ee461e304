// SPDX-License-Identifier: Apache-2.0
package landfall.tap.blank;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Length;
import landfall.thread.Table;

/**
 * One blank.
 *
 * @param list where it stands: {@code USCTI 302}, {@code ISO 529}, {@code DIN 371}, {@code DIN 376}
 * @param nominal diameter of the thread it is for
 * @param read whether the row was read; remembered otherwise
 */
public record TapBlank(String list, Length nominal, Lengths lengths, Length shank, Length square, boolean read) {
    /** Overall length, greatest length of thread, and length of the square that drives the tap. */
    public record Lengths(Length overall, Length thread, Length square) {}

    private static final double SAME_MM = 0.01;
    private static final double REMEMBERED_FROM_INCH = 1.2;

    private static final class Held {
        static final List<TapBlank> ALL = load();
    }

    public static List<TapBlank> all() {
        return Held.ALL;
    }

    /** How deep its point goes in a hole: up to the square where the shank passes, else its thread alone. */
    public Length reach(Length hole) {
        return shank.compareTo(hole) < 0 ? lengths.overall().minus(lengths.square()) : lengths.thread();
    }

    /** The blanks for a nominal diameter, inch and metric lists alike. */
    public static List<TapBlank> of(Length nominal) {
        return all().stream()
                .filter(blank -> Math.abs(blank.nominal.mm() - nominal.mm()) < SAME_MM)
                .toList();
    }

    private static List<TapBlank> load() {
        List<TapBlank> all = new ArrayList<>();
        for (List<String> row : Table.at("/tap/blank-inch.csv")) {
            double nominal = number(row, 1);
            all.add(new TapBlank(
                    "USCTI 302",
                    Length.ofInch(nominal),
                    new Lengths(
                            Length.ofInch(number(row, 3)),
                            Length.ofInch(number(row, 4)),
                            Length.ofInch(number(row, 5))),
                    Length.ofInch(number(row, 6)),
                    Length.ofInch(number(row, 7)),
                    nominal < REMEMBERED_FROM_INCH));
        }
        for (List<String> row : Table.at("/tap/blank-metric.csv")) {
            all.add(new TapBlank(
                    row.get(0),
                    Length.ofMm(number(row, 1)),
                    new Lengths(Length.ofMm(number(row, 2)), Length.ofMm(number(row, 3)), Length.ofMm(number(row, 6))),
                    Length.ofMm(number(row, 4)),
                    Length.ofMm(number(row, 5)),
                    row.get(7).equals("read")));
        }
        return List.copyOf(all);
    }

    private static double number(List<String> row, int column) {
        return Double.parseDouble(row.get(column));
    }
}
