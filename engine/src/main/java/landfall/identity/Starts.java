// SPDX-License-Identifier: Apache-2.0
package landfall.identity;

import landfall.fault.Answer;
import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.thread.CallOut;
import landfall.thread.Family;
import landfall.thread.ScrewThread;
import landfall.thread.callout.CallOuts;
import landfall.thread.metric.MetricCallOut;
import landfall.thread.scan.Numerals;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** How many starts a tap has, counted or from its lead angle, and what a thread is then called. */
final class Starts {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/what-is-this-tap.md, starts");
    static final Rule LEAD_ANGLE = Rule.given("λ", "deg", "lead angle of the groove at the pitch line");
    static final Rule PITCH = Rule.given("P_seen", "mm", "pitch, crest to crest");
    static final Rule PITCH_LINE = new Rule(
            "E_seen", "d_seen - 0.75*P_seen", "mm", GEOMETRY, Trust.ESTIMATE, "pitch diameter of a tap, about");
    public static final Rule COUNT = new Rule(
            "k_λ", "pi*E_seen*tan(λ)/P_seen", "1", GEOMETRY, Trust.DERIVED, "starts by the lead angle, unrounded");

    /** A lead angle read with a protractor is not better than this of one start. */
    private static final double NEAR_WHOLE = 0.35;

    private static final int MOST = 12;

    private Starts() {}

    /** 1 when nothing was seen of it. */
    static int of(Sighting sighting, Pen pen) {
        Integer counted = sighting.seen().helix().starts();
        Angle lead = sighting.seen().helix().leadAngle();
        if (lead == null) {
            return counted == null ? 1 : counted;
        }
        double d = pen.write(Identification.MEASURED, sighting.major().mm());
        double P = pen.write(PITCH, sighting.pitch().mm());
        double angle = pen.write(LEAD_ANGLE, lead.deg());
        double E = pen.write(PITCH_LINE, d - 0.75 * P);
        double k = pen.write(COUNT, Math.PI * E * Math.tan(Math.toRadians(angle)) / P);
        int whole = (int) Math.round(k);
        boolean parts = counted != null && counted != whole;
        if (whole < 1 || whole > MOST || Math.abs(k - whole) > NEAR_WHOLE || parts) {
            throw new OutOfRange(
                    "lead-angle",
                    "%.2f deg, which is %.2f starts".formatted(lead.deg(), k),
                    counted == null
                            ? "near a whole number of starts"
                            : "that of the %d starts counted".formatted(counted),
                    "measure from the plane square to the axis, or count the starts at the end of the thread");
        }
        return whole;
    }

    /** The call-out with so many starts; itself with one. */
    static CallOut of(CallOut single, int starts) {
        if (starts == 1) {
            return single;
        }
        return CallOuts.read(text(single, starts)) instanceof Answer.Of<CallOut> many ? many.value() : single;
    }

    private static String text(CallOut single, int starts) {
        ScrewThread thread = single.thread();
        String name = single.normal();
        boolean metric = single instanceof MetricCallOut || thread.family() == Family.STI_METRIC;
        if (metric || thread.family() == Family.TRAPEZOIDAL) {
            int cross = name.indexOf('x');
            String pitch = name.substring(cross + 1);
            String lead = Numerals.plain(Math.round(Double.parseDouble(pitch) * starts * Numerals.ONE));
            return metric
                    ? name.substring(0, cross) + "xPh" + lead + "P" + pitch
                    : name.substring(0, cross) + "x" + lead + "(P" + pitch + ")";
        }
        return name + " " + starts + " STARTS";
    }
}
