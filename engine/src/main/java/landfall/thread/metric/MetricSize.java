// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import landfall.quantity.Length;
import landfall.thread.Table;
import landfall.thread.scan.Numerals;

/** Diameter and pitch in units of 1e-4 mm, and starts. */
public record MetricSize(int diameter, int pitch, int starts) {
    private static final TreeMap<Integer, Integer> COARSE = new TreeMap<>();
    private static final Set<MetricSize> STANDARD = new LinkedHashSet<>();
    private static final Map<Integer, List<MetricSize>> BY_DIAMETER = new LinkedHashMap<>();

    static {
        for (List<String> row : Table.rows("metric-series")) {
            MetricSize size = new MetricSize(units(row.get(0)), units(row.get(1)), 1);
            STANDARD.add(size);
            BY_DIAMETER.computeIfAbsent(size.diameter, any -> new ArrayList<>()).add(size);
            if (row.get(2).equals("coarse")) {
                COARSE.put(size.diameter, size.pitch);
            }
        }
    }

    private static int units(String mm) {
        return (int) Math.round(Double.parseDouble(mm) * PitchIndex.UNITS_PER_MM);
    }

    /** The coarse pitch of a diameter, where the standard gives one. */
    static Optional<Integer> coarsePitch(int diameter) {
        return Optional.ofNullable(COARSE.get(diameter));
    }

    /** Every standard size, by diameter, coarse first. */
    public static List<MetricSize> standard() {
        return List.copyOf(STANDARD);
    }

    /** The standard sizes of the nearest diameter that has any. */
    static List<MetricSize> nearest(int diameter) {
        return BY_DIAMETER.keySet().stream()
                .min(Comparator.comparingInt(each -> Math.abs(each - diameter)))
                .map(BY_DIAMETER::get)
                .orElse(List.of());
    }

    boolean isStandard() {
        return STANDARD.contains(new MetricSize(diameter, pitch, 1));
    }

    double pitchMm() {
        return (double) pitch / PitchIndex.UNITS_PER_MM;
    }

    public Length majorLength() {
        return Length.ofMm((double) diameter / PitchIndex.UNITS_PER_MM);
    }

    public Length pitchLength() {
        return Length.ofMm(pitchMm());
    }

    /** {@code M8x1.25} or {@code M16xPh3P1.5}. */
    public String label() {
        return "M" + pair();
    }

    /** {@code 8x1.25} or {@code 16xPh3P1.5}. */
    String pair() {
        String text = mm(diameter) + "x";
        return starts == 1 ? text + mm(pitch) : text + "Ph" + mm(pitch * starts) + "P" + mm(pitch);
    }

    static String mm(int units) {
        return Numerals.plain(units * (Numerals.ONE / PitchIndex.UNITS_PER_MM));
    }
}
