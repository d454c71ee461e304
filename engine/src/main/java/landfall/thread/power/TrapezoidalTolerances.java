// SPDX-License-Identifier: Apache-2.0
package landfall.thread.power;

import java.util.List;
import landfall.quantity.Length;
import landfall.thread.PreferredNumber;
import landfall.thread.Table;

/** Tolerances of trapezoidal threads: tabulated figures where held, else formula and preferred number. Millimetres. */
final class TrapezoidalTolerances {
    /** Where a figure comes from. */
    enum Origin {
        READ,
        REMEMBERED,
        FORMULA
    }

    /** A tolerance or deviation and where it comes from. */
    record Entry(double mm, Origin origin) {}

    private static final List<List<String>> TABLE = Table.rows("trapezoidal-tolerances");
    private static final List<List<String>> DEVIATIONS = Table.rows("trapezoidal-deviations");
    private static final double[] RANGES = {5.6, 11.2, 22.4, 45, 90, 180, 355};

    private TrapezoidalTolerances() {}

    /** Amount that the screw stays under basic: e or c. */
    static Entry deviation(char position, double P) {
        int column = position == 'e' ? 1 : 2;
        for (List<String> row : DEVIATIONS) {
            if (Double.parseDouble(row.get(0)) == P) {
                boolean read = position == 'e' && P <= 4;
                return new Entry(Integer.parseInt(row.get(column)) / 1000.0, read ? Origin.READ : Origin.REMEMBERED);
            }
        }
        if (position == 'c') {
            throw new IllegalStateException("position c at pitch " + P + " was read but is not held");
        }
        return preferred(50 + 11 * P);
    }

    /** Position c is held for the standard's own pitches only; no formula of it is known here. */
    static boolean holdsC(double P) {
        return DEVIATIONS.stream().anyMatch(row -> Double.parseDouble(row.get(0)) == P);
    }

    /** Of the pitch diameter; {@code table} is Td2 outside, TD2 inside. */
    static Entry pitch(String table, double d, double P, int grade) {
        for (List<String> row : TABLE) {
            boolean here = row.get(0).equals(table)
                    && !row.get(1).isEmpty()
                    && d > Double.parseDouble(row.get(1))
                    && d <= Double.parseDouble(row.get(2))
                    && Double.parseDouble(row.get(3)) == P
                    && Integer.parseInt(row.get(4)) == grade;
            if (here) {
                return entry(row);
            }
        }
        double six = 90 * Math.pow(P, 0.4) * Math.pow(meanOfRange(d), 0.1);
        double factor = table.equals("Td2") ? outside(grade) : inside(grade);
        return preferred(factor * six);
    }

    private static double outside(int grade) {
        return grade == 7 ? 1.25 : grade == 8 ? 1.6 : 2;
    }

    private static double inside(int grade) {
        return grade == 7 ? 1.7 : grade == 8 ? 2.12 : 2.65;
    }

    private static double meanOfRange(double d) {
        for (int i = 1; i < RANGES.length; i++) {
            if (d <= RANGES[i]) {
                return Math.sqrt(RANGES[i - 1] * RANGES[i]);
            }
        }
        throw new IllegalStateException("diameter " + d + " was read but is over the last range");
    }

    /** Grade 4 of the major diameter outside. */
    static Entry major(double P) {
        return crest("Td", P, 0.63 * (180 * Math.cbrt(P * P) - 3.15 / Math.sqrt(P)));
    }

    /** Grade 4 of the minor diameter inside. */
    static Entry minor(double P) {
        return crest("TD1", P, 0.63 * 230 * Math.pow(P, 0.7));
    }

    private static Entry crest(String table, double P, double formula) {
        return TABLE.stream()
                .filter(row -> row.get(0).equals(table) && Double.parseDouble(row.get(3)) == P)
                .findFirst()
                .map(TrapezoidalTolerances::entry)
                .orElseGet(() -> preferred(formula));
    }

    private static Entry entry(List<String> row) {
        return new Entry(
                Integer.parseInt(row.get(5)) / 1000.0, row.get(6).equals("read") ? Origin.READ : Origin.REMEMBERED);
    }

    private static Entry preferred(double um) {
        return new Entry(PreferredNumber.nearest(Length.ofMm(um / 1000)).mm(), Origin.FORMULA);
    }
}
