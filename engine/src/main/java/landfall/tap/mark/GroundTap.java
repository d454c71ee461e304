// SPDX-License-Identifier: Apache-2.0
package landfall.tap.mark;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Rounding;
import landfall.thread.Family;
import landfall.thread.ScrewThread;
import landfall.working.Pen;

/**
 * Ground-thread inch taps: pitch diameter by the mark, major diameter by the pitch.
 *
 * <p>The reprints of the tap table say that the least major diameter is basic + B; greatest less B gives 43 of the 44
 * printed limits, basic + B few of them. So B is taken from the greatest.
 */
final class GroundTap {
    private static final double STEP_INCH = 0.0005;
    private static final double WIDE_FROM_INCH = 1;

    private GroundTap() {}

    static TapZone zone(TapMark.Limit limit, ScrewThread thread, Pen pen) {
        Limits pitch = limit.mark().on(thread, null, pen);
        return zone(limit, pitch, thread, pen);
    }

    static TapZone zone(TapMark.Oversize mark, ScrewThread thread, Pen pen) {
        double basic = pen.write(
                TapZoneRules.BASIC_INCH, Rounding.halfUp(thread.pitchDiameter().inch(), 4));
        double over = pen.write(TapZoneRules.OVER, mark.over().inch());
        double min = pen.write(TapZoneRules.OVER_MIN, Rounding.halfUp(basic + over, 4));
        double max = pen.write(TapZoneRules.OVER_MAX, Rounding.halfUp(min + STEP_INCH, 4));
        return zone(mark, new Limits(Length.ofInch(min), Length.ofInch(max)), thread, pen);
    }

    private static TapZone zone(TapMark mark, Limits pitch, ScrewThread thread, Pen pen) {
        List<Caution> cautions = new ArrayList<>();
        if (thread.major().inch() > WIDE_FROM_INCH) {
            cautions.add(new Caution(
                    "wideOverOneInch",
                    "Over 1 in one table gives special taps a pitch tolerance of .0010 in and more;"
                            + " stock taps are .0005"
                            + " wide, and so is this.",
                    mark.words()));
        }
        boolean isUnified = thread.family() == Family.UNIFIED || thread.family() == Family.UNJ;
        if (!isUnified) {
            cautions.add(new Caution(
                    "majorNotHeld",
                    "The rule for the major diameter of such a tap is not held.",
                    thread.family().code()));
        }
        return new TapZone(mark, pitch, isUnified ? major(thread, pen) : TapZone.OPEN, cautions);
    }

    private static Limits major(ScrewThread thread, Pen pen) {
        double D = pen.write(TapZoneRules.D, Rounding.halfUp(thread.major().inch(), 4));
        double P = pen.write(TapZoneRules.P, thread.pitch().inch());
        double A = pen.write(TapZoneRules.A, Rounding.halfUp(0.130 * P, 4));
        double share = pen.write(TapZoneRules.SHARE_B, share(1 / P));
        double B = pen.write(TapZoneRules.B, Rounding.halfUp(share * P, 4));
        double max = pen.write(TapZoneRules.MAJOR_MAX, Rounding.halfUp(D + A, 4));
        double min = pen.write(TapZoneRules.MAJOR_MIN, Rounding.halfUp(max - B, 4));
        return new Limits(Length.ofInch(min), Length.ofInch(max));
    }

    private static double share(double threadsPerInch) {
        if (threadsPerInch > 47.5) {
            return 0.087;
        }
        return threadsPerInch > 35.5 ? 0.076 : 0.065;
    }
}
