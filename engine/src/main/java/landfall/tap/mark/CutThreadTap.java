// SPDX-License-Identifier: Apache-2.0
package landfall.tap.mark;

import java.util.List;
import java.util.Optional;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.ScrewThread;
import landfall.thread.Table;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;
import landfall.thread.unified.UnifiedSize;
import landfall.working.Pen;

/** Cut-thread inch taps: limits as printed, size by size. */
final class CutThreadTap {
    private record Row(Length major, Length pitch, double[] figures) {}

    private static final List<Row> ROWS = Table.at("/tap/cut-thread-limits.csv").stream()
            .map(CutThreadTap::row)
            .toList();
    /** Sizes are matched to a thousandth of a millimetre. */
    private static final double SAME_MM = 1e-3;

    private CutThreadTap() {}

    private static Row row(List<String> cells) {
        UnifiedSize size = UnifiedSize.of(InchHead.read(new Cursor(cells.get(0) + "-" + cells.get(1))), 1);
        double[] figures =
                cells.subList(2, 6).stream().mapToDouble(Double::parseDouble).toArray();
        return new Row(size.majorLength(), size.pitchLength(), figures);
    }

    static TapZone zone(TapMark mark, ScrewThread thread, Pen pen) {
        double[] printed = of(thread)
                .orElseThrow(() -> new OutOfRange(
                        "marking",
                        mark.words(),
                        "one of the sizes of the cut-thread tables, No. 0 to 1 1/4 in",
                        "give the tap's own limits"))
                .figures();
        return new TapZone(
                mark,
                new Limits(
                        Length.ofInch(pen.write(TapZoneRules.CUT_PITCH_MIN, printed[2])),
                        Length.ofInch(pen.write(TapZoneRules.CUT_PITCH_MAX, printed[3]))),
                new Limits(
                        Length.ofInch(pen.write(TapZoneRules.CUT_MAJOR_MIN, printed[0])),
                        Length.ofInch(pen.write(TapZoneRules.CUT_MAJOR_MAX, printed[1]))),
                List.of());
    }

    private static Optional<Row> of(ScrewThread thread) {
        return ROWS.stream()
                .filter(row -> Math.abs(row.major.mm() - thread.major().mm()) < SAME_MM)
                .filter(row -> Math.abs(row.pitch.mm() - thread.pitch().mm()) < SAME_MM)
                .findFirst();
    }
}
