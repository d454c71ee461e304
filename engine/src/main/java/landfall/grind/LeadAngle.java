// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * The lead angle of the thread at its basic diameters, and how far the tap advances while one land passes.
 *
 * @param axialAdvance over the land, edge to heel
 */
public record LeadAngle(Angle major, Angle pitch, Angle minor, Length axialAdvance) {
    static final Source GEOMETRY = Source.of("derived", "docs/methods/chamfer-relief.md");
    static final Source PROFILE = Source.of("iso-68-1", "basic profile");
    public static final Rule MAJOR_DIAMETER = Rule.given("d", "mm", "basic major diameter");
    public static final Rule PITCH = Rule.given("P", "mm", "pitch");
    public static final Rule STARTS = Rule.given("k", "1", "starts");
    static final Rule ADDENDUM =
            Rule.table("h_a", "1", PROFILE, Trust.STANDARD, "crest to pitch line, share of the pitch");
    static final Rule DEPTH =
            Rule.table("h_m", "1", PROFILE, Trust.STANDARD, "crest to basic minor, share of the pitch");
    public static final Rule LEAD = new Rule("L", "k*P", "mm", GEOMETRY, Trust.DERIVED, "lead: advance in one turn");
    static final Rule PITCH_DIAMETER =
            new Rule("d_2", "d - 2*h_a*P", "mm", PROFILE, Trust.STANDARD, "basic pitch diameter, unrounded");
    static final Rule MINOR_DIAMETER =
            new Rule("d_1", "d - 2*h_m*P", "mm", PROFILE, Trust.STANDARD, "basic minor diameter, unrounded");
    public static final Rule AT_MAJOR =
            new Rule("λ_d", "atan(L/(pi*d))", "deg", GEOMETRY, Trust.DERIVED, "lead angle at the major diameter");
    public static final Rule AT_PITCH =
            new Rule("λ_2", "atan(L/(pi*d_2))", "deg", GEOMETRY, Trust.DERIVED, "lead angle at the pitch diameter");
    public static final Rule AT_MINOR =
            new Rule("λ_1", "atan(L/(pi*d_1))", "deg", GEOMETRY, Trust.DERIVED, "lead angle at the minor diameter");
    public static final Rule ADVANCE =
            new Rule("A", "L*θ_L/360", "mm", GEOMETRY, Trust.DERIVED, "advance of the tap while one land passes");

    /** Lead angles of a thread, and the advance over a land whose angle θ_L has been written. */
    public static LeadAngle of(ScrewThread thread, Angle land, Pen pen) {
        double d = pen.write(MAJOR_DIAMETER, thread.major().mm());
        double P = pen.write(PITCH, thread.pitch().mm());
        double k = pen.write(STARTS, thread.lead().starts());
        double h_a = pen.write(ADDENDUM, thread.profile().addendum());
        double h_m = pen.write(DEPTH, thread.profile().depth());
        double L = pen.write(LEAD, k * P);
        double d_2 = pen.write(PITCH_DIAMETER, d - 2 * h_a * P);
        double d_1 = pen.write(MINOR_DIAMETER, d - 2 * h_m * P);
        return new LeadAngle(
                Angle.ofDeg(pen.write(AT_MAJOR, at(L, d))),
                Angle.ofDeg(pen.write(AT_PITCH, at(L, d_2))),
                Angle.ofDeg(pen.write(AT_MINOR, at(L, d_1))),
                Length.ofMm(pen.write(ADVANCE, L * land.deg() / 360)));
    }

    private static double at(double L, double diameter) {
        return Math.toDegrees(Math.atan(L / (Math.PI * diameter)));
    }
}
