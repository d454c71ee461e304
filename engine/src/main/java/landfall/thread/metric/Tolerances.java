// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

import java.util.Arrays;
import java.util.List;
import landfall.thread.Table;

/** The tables of ISO 965-1: fundamental deviations and tolerances in micrometres. Zero stands for a blank. */
final class Tolerances {
    /** Which table. */
    enum Kind {
        /** Minor diameter inside. */
        TD1,
        /** Major diameter outside. */
        Td,
        /** Pitch diameter inside. */
        TD2,
        /** Pitch diameter outside. */
        Td2
    }

    /** One entry: the figure, and whether it was read or is remembered. */
    record Entry(int um, boolean remembered) {
        static final Entry BLANK = new Entry(0, false);

        boolean isBlank() {
            return um == 0;
        }
    }

    private static final int GRADES = 10;
    private static final String POSITIONS = "efgG";

    private static final Entry[] TOLERANCES =
            new Entry[Kind.values().length * PitchIndex.ranges() * PitchIndex.pitches() * GRADES];
    private static final Entry[] DEVIATIONS = new Entry[POSITIONS.length() * PitchIndex.pitches()];

    static {
        Arrays.fill(TOLERANCES, Entry.BLANK);
        Arrays.fill(DEVIATIONS, Entry.BLANK);
        Table.rows("metric-tolerances").forEach(Tolerances::enter);
    }

    private Tolerances() {}

    private static void enter(List<String> row) {
        int pitch = PitchIndex.ofPitch(units(row.get(3)));
        Entry entry =
                new Entry(Math.abs(Integer.parseInt(row.get(5))), row.get(6).equals("memory"));
        String table = row.get(0);
        if (table.equals("es") || table.equals("EI")) {
            DEVIATIONS[POSITIONS.indexOf(row.get(4)) * PitchIndex.pitches() + pitch] = entry;
            return;
        }
        Kind kind = Kind.valueOf(table);
        int grade = Integer.parseInt(row.get(4));
        if (!row.get(2).isEmpty()) {
            TOLERANCES[place(kind, PitchIndex.ofDiameter(units(row.get(2))), pitch, grade)] = entry;
            return;
        }
        for (int range = 0; range < PitchIndex.ranges(); range++) {
            TOLERANCES[place(kind, range, pitch, grade)] = entry;
        }
    }

    private static int units(String mm) {
        return (int) Math.round(Double.parseDouble(mm) * PitchIndex.UNITS_PER_MM);
    }

    private static int place(Kind kind, int range, int pitch, int grade) {
        return ((kind.ordinal() * PitchIndex.ranges() + range) * PitchIndex.pitches() + pitch) * GRADES + grade;
    }

    /** The tabulated tolerance; blank where the standard has none for this range, pitch and grade. */
    static Entry tolerance(Kind kind, MetricSize size, int grade) {
        int pitch = PitchIndex.ofPitch(size.pitch());
        int range = PitchIndex.ofDiameter(size.diameter());
        return pitch < 0 || range < 0 ? Entry.BLANK : TOLERANCES[place(kind, range, pitch, grade)];
    }

    /** The tabulated amount of a fundamental deviation, without its sign; h and H are zero and not asked here. */
    static Entry deviation(char position, MetricSize size) {
        int pitch = PitchIndex.ofPitch(size.pitch());
        return pitch < 0 ? Entry.BLANK : DEVIATIONS[POSITIONS.indexOf(position) * PitchIndex.pitches() + pitch];
    }
}
