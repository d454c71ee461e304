// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * Measurement over three wires: from the pitch diameter to the size over the wires, and back.
 *
 * <p>A is half the included angle, B the lead angle at the pitch line. The lead term is always in. Its formula is first
 * order: fine to 5 degrees of lead; above that the wire is laid on the helicoid numerically ({@link WireOnHelicoid}).
 */
public final class ThreeWires {
    private static final Source H28 = Source.of("nbs-h28", "three-wire formula with lead term, body from memory");
    private static final Source HANDBOOK = Source.of("machinerys-handbook-31", "p. 2127, three-wire method");
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/three-wires.md");
    static final Rule PITCH = Rule.given("p_w", "mm", "pitch");
    static final Rule LEAD = Rule.given("L", "mm", "lead");
    static final Rule HALF_ANGLE = Rule.given("A", "deg", "half the included angle");
    public static final Rule BEST = new Rule(
            "W_best", "p_w/(2*cos(A))", "mm", HANDBOOK, Trust.HANDBOOK, "best wire: touches at the pitch line");
    public static final Rule LEAST_60 =
            new Rule("W_least", "0.56*p_w", "mm", HANDBOOK, Trust.HANDBOOK, "least usable wire");
    public static final Rule GREATEST_60 =
            new Rule("W_most", "0.9*p_w", "mm", HANDBOOK, Trust.HANDBOOK, "greatest usable wire");
    static final Rule ADDENDUM = Rule.table(
            "h_a",
            "1",
            Source.of("derived", "profile of the thread"),
            Trust.DERIVED,
            "crest to pitch line, share of the pitch");
    public static final Rule LEAST = new Rule(
            "W_least",
            "(2*h_a*p_w + p_w/(2*tan(A)))/(1 + 1/sin(A))",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "least usable wire: flush with the crests");
    public static final Rule GREATEST = new Rule(
            "W_most",
            "2*sin(A)/cos(A)^2*(h_a*p_w + p_w/(4*tan(A)))",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "greatest usable wire: touches at the crests");
    public static final Rule WIRE = Rule.given("W", "mm", "wire in use");
    static final Rule WIRE_BEST =
            new Rule("W", "W_best", "mm", HANDBOOK, Trust.HANDBOOK, "wire in use: the best wire, as none was given");
    static final Rule PITCH_DIAMETER = Rule.given("E", "mm", "pitch diameter");
    static final Rule PITCH_DIAMETER_BASIC = new Rule(
            "E",
            "E_0",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "pitch diameter for the lead term: the basic one, as none was given");
    static final Rule BASIC = Rule.table(
            "E_0", "mm", Source.of("derived", "basic sizes of the thread"), Trust.DERIVED, "basic pitch diameter");
    public static final Rule LEAD_ANGLE =
            new Rule("B", "atan(L/(pi*E))", "deg", GEOMETRY, Trust.DERIVED, "lead angle at the pitch line");
    public static final Rule LEAD_TERM = new Rule(
            "t_L",
            "W*tan(B)^2*cos(A)/(2*tan(A))",
            "mm",
            H28,
            Trust.HANDBOOK,
            "what the lead adds to the size over the wires");
    public static final Rule OVER = new Rule(
            "M", "E - p_w/(2*tan(A)) + W*(1 + 1/sin(A)) + t_L", "mm", H28, Trust.HANDBOOK, "size over three wires");
    static final Rule OVER_NUMERIC = Rule.table(
            "M", "mm", GEOMETRY, Trust.DERIVED, "size over three wires, wire laid on the helicoid numerically");
    static final Rule OVER_GIVEN = Rule.given("M", "mm", "size over three wires");
    public static final Rule PITCH_DIAMETER_FROM = Rule.table(
            "E",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "pitch diameter whose size over the wires is the one measured (solved; check it with the formula for M)");

    /** Lead angle above which the first-order lead term is no longer enough. */
    static final double NUMERIC_FROM_DEG = 5;

    private ThreeWires() {}

    /** The wires that fit a thread. */
    public record Wires(Length best, Length least, Length greatest) {}

    /** What was measured or asked with a wire. */
    public record Measurement(Length wire, Length pitchDiameter, Length over, Length leadTerm, boolean numeric) {}

    /** Best, least and greatest wire. */
    public static Wires wires(ScrewThread thread, Pen pen) {
        double P = pen.write(PITCH, thread.pitch().mm());
        double A = Math.toRadians(
                pen.write(HALF_ANGLE, thread.profile().flankAngle().deg()));
        double best = pen.write(BEST, P / (2 * Math.cos(A)));
        if (thread.profile().includedAngle().deg() == 60) {
            return new Wires(
                    Length.ofMm(best),
                    Length.ofMm(pen.write(LEAST_60, 0.56 * P)),
                    Length.ofMm(pen.write(GREATEST_60, 0.9 * P)));
        }
        double h_a = pen.write(ADDENDUM, thread.profile().addendum());
        double least = pen.write(LEAST, (2 * h_a * P + P / (2 * Math.tan(A))) / (1 + 1 / Math.sin(A)));
        double greatest =
                pen.write(GREATEST, 2 * Math.sin(A) / (Math.cos(A) * Math.cos(A)) * (h_a * P + P / (4 * Math.tan(A))));
        return new Wires(Length.ofMm(best), Length.ofMm(least), Length.ofMm(greatest));
    }

    /** Refuses a pitch diameter that cannot be this thread's: further than half a pitch from the basic one. */
    static void judge(String field, Length given, Length pitchDiameter, ScrewThread thread) {
        Length basic = thread.pitchDiameter();
        if (Math.abs(pitchDiameter.mm() - basic.mm()) > thread.pitch().mm() / 2) {
            throw new OutOfRange(
                    field,
                    given.words(),
                    "such that the pitch diameter lies within half a pitch of the basic one, " + basic.words(),
                    "check the call-out, the wire and the reading");
        }
    }

    /** Size over the wires for a pitch diameter. */
    public static Measurement over(ScrewThread thread, Length wire, Length pitchDiameter, Pen pen) {
        double L = pen.write(LEAD, thread.lead().perTurn().mm());
        double W = wire.mm();
        double E = pen.write(PITCH_DIAMETER, pitchDiameter.mm());
        double B = Math.toRadians(pen.write(LEAD_ANGLE, Math.toDegrees(Math.atan(L / (Math.PI * E)))));
        double A = thread.profile().flankAngle().rad();
        double term = pen.write(LEAD_TERM, W * Math.tan(B) * Math.tan(B) * Math.cos(A) / (2 * Math.tan(A)));
        boolean numeric = Math.toDegrees(B) > NUMERIC_FROM_DEG;
        double M = numeric
                ? pen.write(
                        OVER_NUMERIC,
                        WireOnHelicoid.over(thread, wire, pitchDiameter).mm())
                : pen.write(OVER, E - thread.pitch().mm() / (2 * Math.tan(A)) + W * (1 + 1 / Math.sin(A)) + term);
        return new Measurement(wire, pitchDiameter, Length.ofMm(M), Length.ofMm(term), numeric);
    }

    /** Pitch diameter from the size over the wires: the inverse of {@link #over}, solved by false position. */
    public static Measurement pitchDiameter(ScrewThread thread, Length wire, Length over, Pen pen) {
        pen.write(OVER_GIVEN, over.mm());
        double A = thread.profile().flankAngle().rad();
        double E = over.mm() + thread.pitch().mm() / (2 * Math.tan(A)) - wire.mm() * (1 + 1 / Math.sin(A));
        if (!(E > 0)) {
            throw new OutOfRange(
                    "over",
                    over.words(),
                    "a size over three wires of this thread",
                    "measure over the wires, not the crests");
        }
        for (int i = 0; i < 60; i++) {
            double off = over(thread, wire, Length.ofMm(E), Pen.NONE).over().mm() - over.mm();
            E -= off;
            if (Math.abs(off) < 1e-12) {
                break;
            }
        }
        judge("over", over, Length.ofMm(E), thread);
        pen.write(LEAD, thread.lead().perTurn().mm());
        Measurement found = over(thread, wire, Length.ofMm(pen.write(PITCH_DIAMETER_FROM, E)), Pen.NONE);
        double B = Math.toRadians(pen.write(
                LEAD_ANGLE, Math.toDegrees(Math.atan(thread.lead().perTurn().mm() / (Math.PI * E)))));
        pen.write(LEAD_TERM, wire.mm() * Math.tan(B) * Math.tan(B) * Math.cos(A) / (2 * Math.tan(A)));
        return found;
    }

    /** The wire in use: as given and judged, or the best one. */
    static Length wire(Wires wires, @org.jspecify.annotations.Nullable Length given, Pen pen) {
        if (given == null) {
            return Length.ofMm(pen.write(WIRE_BEST, wires.best().mm()));
        }
        double room = 1e-9;
        if (given.mm() < wires.least().mm() - room
                || given.mm() > wires.greatest().mm() + room) {
            throw new OutOfRange(
                    "wire",
                    given.words(),
                    "from %s to %s for this pitch"
                            .formatted(wires.least().words(), wires.greatest().words()),
                    "use the best wire, %s, or one near it"
                            .formatted(wires.best().words()));
        }
        return Length.ofMm(pen.write(WIRE, given.mm()));
    }
}
