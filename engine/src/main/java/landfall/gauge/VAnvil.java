// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * An odd-fluted tap in a V-anvil micrometer: one wire in the groove under the spindle, the V's faces on the crests of
 * the two lands opposite, or on wires in their grooves too.
 *
 * <p>The V that fits N lands has 180 − 360/N degrees. From its apex to the far side of a round d it is k·d, so the
 * spindle moves k times the change of diameter; a scale "in diameters" is already divided by k.
 *
 * @param factor k
 */
public record VAnvil(Angle angle, double factor, Length pitchDiameter) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/v-anvil.md");
    static final Rule FLUTES = Rule.given("N", "1", "flutes");
    public static final Rule ANGLE = new Rule("V", "180 - 360/N", "deg", GEOMETRY, Trust.DERIVED, "angle of the V");
    public static final Rule FACTOR = new Rule(
            "k_V", "(1 + 1/sin(V/2))/2", "1", GEOMETRY, Trust.DERIVED, "spindle travel per change of diameter");
    static final Rule READING = Rule.given("R", "mm", "reading in diameters");
    static final Rule HEIGHT = Rule.given("h_V", "mm", "height from the apex, plain scale");
    static final Rule READING_FROM_HEIGHT =
            new Rule("R", "h_V/k_V", "mm", GEOMETRY, Trust.DERIVED, "reading in diameters");
    static final Rule CREST = Rule.given("d_c", "mm", "diameter over the crests");
    public static final Rule PITCH_DIAMETER = new Rule(
            "E_V",
            "2*k_V*R - d_c/sin(V/2) - W*(1 + 1/sin(A)) + p_w/(2*tan(A))",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "pitch diameter in the V-anvil");

    public static final Rule PITCH_DIAMETER_ON_WIRES = new Rule(
            "E_V",
            "R - W*(1 + 1/sin(A)) + p_w/(2*tan(A))",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "pitch diameter in the V-anvil, wires on all three lands");

    /** A reading: in diameters, or as a plain height from the apex. */
    public record Reading(Length value, boolean plainHeight) {}

    /** Pitch diameter; P, A and W must have been written by {@link ThreeWires}. */
    static VAnvil of(ScrewThread thread, GaugeWish.InVAnvil in, Length wire, Pen pen) {
        int flutes = in.flutes();
        if (flutes < 3 || flutes % 2 == 0) {
            throw new OutOfRange(
                    "flutes",
                    Integer.toString(flutes),
                    "an odd number from 3",
                    "measure a tap with an even number of flutes with a plain micrometer and three wires");
        }
        double N = pen.write(FLUTES, flutes);
        double V = Math.toRadians(pen.write(ANGLE, 180 - 360 / N));
        double cosecant = 1 / Math.sin(V / 2);
        double k = pen.write(FACTOR, (1 + cosecant) / 2);
        double R = in.reading().plainHeight()
                ? fromHeight(in.reading().value().mm(), k, pen)
                : pen.write(READING, in.reading().value().mm());
        double A = thread.profile().flankAngle().rad();
        double wires = wire.mm() * (1 + 1 / Math.sin(A)) - thread.pitch().mm() / (2 * Math.tan(A));
        double E = in.crest() == null
                ? pen.write(PITCH_DIAMETER_ON_WIRES, R - wires)
                : pen.write(
                        PITCH_DIAMETER, 2 * k * R - pen.write(CREST, in.crest().mm()) * cosecant - wires);
        ThreeWires.judge(
                in.reading().plainHeight() ? "height" : "reading", in.reading().value(), Length.ofMm(E), thread);
        return new VAnvil(Angle.ofRad(V), k, Length.ofMm(E));
    }

    private static double fromHeight(double height, double k, Pen pen) {
        pen.write(HEIGHT, height);
        return pen.write(READING_FROM_HEIGHT, height / k);
    }
}
