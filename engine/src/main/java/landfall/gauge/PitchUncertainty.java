// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import java.util.List;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * How well a pitch diameter over wires or in a V-anvil is known, from its readings.
 *
 * <p>First order: each reading's uncertainty times how far the pitch diameter follows it, added in squares. All are
 * expanded alike (95 %), so the factor cancels. The wires count as one: their errors come from one set. The half angle
 * counts by how far the wire is from the best one, which touches at the pitch line and does not feel the angle.
 *
 * @param expanded of the pitch diameter, 95 %
 * @param parts what it is made of, with their shares of its square
 */
public record PitchUncertainty(Length expanded, List<Part> parts) {
    private static final Source GUM = Source.of("jcgm-100", "law of propagation, first order");
    private static final Source TAKEN = Source.of("common-practice", "what a shop may take where nothing is told");
    private static final String U95 = ", 95 %";

    static final Rule READING = Rule.given("U_M", "mm", "uncertainty of the size over the wires" + U95);
    static final Rule SCALE = Rule.given("U_R", "mm", "uncertainty of the reading in the V-anvil" + U95);
    static final Rule DIRECT = Rule.given("U_E", "mm", "uncertainty of the pitch diameter as it was measured" + U95);
    static final Rule WIRE = Rule.given("U_W", "mm", "uncertainty of the wires' diameter" + U95);
    static final Rule CREST = Rule.given("U_c", "mm", "uncertainty of the diameter over the crests" + U95);
    static final Rule FLANK = Rule.given("U_A", "deg", "uncertainty of half the included angle" + U95);

    static final Rule FOLLOWS = rule(
            "c_E", "1/(1 - 2*t_L/E)", "1", "pitch diameter per size over the wires, as the lead term falls with it");
    static final Rule PER_WIRE = rule("c_W", "1 + 1/sin(A) + t_L/W", "1", "pitch diameter per wire diameter");
    static final Rule PER_WIRE_V = rule("c_W", "1 + 1/sin(A)", "1", "pitch diameter per wire diameter");
    static final Rule PER_ANGLE = rule(
            "c_A",
            "cos(A)/sin(A)^2*abs(W - p_w/(2*cos(A)))*pi/180",
            "mm/deg",
            "pitch diameter per degree of half angle: none at the best wire");
    public static final Rule OVER_WIRES = rule(
            "U_E",
            "c_E*sqrt(U_M^2 + (c_W*U_W)^2 + (c_A*U_A)^2)",
            "mm",
            "uncertainty of the pitch diameter over the wires" + U95);
    static final Rule PER_READING = rule("c_R", "2*k_V", "1", "pitch diameter per reading in diameters");
    static final Rule PER_HEIGHT = rule("c_R", "2", "1", "pitch diameter per height on a plain scale");
    static final Rule PER_READING_WIRES = rule("c_R", "1", "1", "pitch diameter per reading in diameters");
    static final Rule PER_HEIGHT_WIRES = rule("c_R", "1/k_V", "1", "pitch diameter per height on a plain scale");
    static final Rule PER_CREST = rule("c_c", "1/sin(V/2)", "1", "pitch diameter per diameter over the crests");
    public static final Rule IN_V = rule(
            "U_EV",
            "sqrt((c_R*U_R)^2 + (c_c*U_c)^2 + (c_W*U_W)^2 + (c_A*U_A)^2)",
            "mm",
            "uncertainty of the pitch diameter in the V-anvil" + U95);
    public static final Rule IN_V_WIRES = rule(
            "U_EV",
            "sqrt((c_R*U_R)^2 + (c_W*U_W)^2 + (c_A*U_A)^2)",
            "mm",
            "uncertainty of the pitch diameter in the V-anvil" + U95);
    public static final Rule SHARE =
            Rule.table("s_U", "%", GUM, Trust.DERIVED, "share of the square of the uncertainty");

    /** One reading and how much of the result's uncertainty, squared, comes from it, in per cent. */
    public record Part(String what, double percent) {}

    public PitchUncertainty {
        parts = List.copyOf(parts);
    }

    private static Rule rule(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, GUM, Trust.DERIVED, means);
    }

    private static Rule taken(Rule given, boolean assumed) {
        return assumed
                ? Rule.table(given.symbol(), given.unit(), TAKEN, Trust.PRACTICE, given.means() + ", as none was told")
                : given;
    }

    /** P, A, W, E and t_L must have been written by {@link ThreeWires}. */
    static PitchUncertainty overWires(Setting setting, ThreeWires.Measurement found, ReadingUncertainty u, Pen pen) {
        double U_M = pen.write(taken(READING, u.assumed()), u.reading().mm());
        double E = found.pitchDiameter().mm();
        double t_L = found.leadTerm().mm();
        double c_E = pen.write(FOLLOWS, 1 / (1 - 2 * t_L / E));
        double wire = setting.wire(PER_WIRE, 1 + 1 / setting.sine() + t_L / setting.W(), u, pen);
        double angle = setting.angle(u, pen);
        double inner = Math.hypot(U_M, Math.hypot(wire, angle));
        double U_E = pen.write(OVER_WIRES, c_E * inner);
        return of(
                U_E,
                List.of(
                        part("size over the wires", U_M / inner, pen),
                        part("wires", wire / inner, pen),
                        part("half angle", angle / inner, pen)));
    }

    /** k_V, V and what {@link ThreeWires} writes must have been written. */
    static PitchUncertainty inVAnvil(
            Setting setting, VAnvil anvil, GaugeWish.InVAnvil in, ReadingUncertainty u, Pen pen) {
        boolean plain = in.reading().plainHeight();
        boolean onWires = in.crest() == null;
        double U_R = pen.write(taken(SCALE, u.assumed()), u.reading().mm());
        Rule follows = onWires ? plain ? PER_HEIGHT_WIRES : PER_READING_WIRES : plain ? PER_HEIGHT : PER_READING;
        double c_R = (onWires ? 1 : 2 * anvil.factor()) / (plain ? anvil.factor() : 1);
        double reading = pen.write(follows, c_R) * U_R;
        double crest = onWires ? 0 : crest(anvil, u, pen);
        double wire = setting.wire(PER_WIRE_V, 1 + 1 / setting.sine(), u, pen);
        double angle = setting.angle(u, pen);
        double all = Math.sqrt(reading * reading + crest * crest + wire * wire + angle * angle);
        double U_EV = pen.write(onWires ? IN_V_WIRES : IN_V, all);
        return of(
                U_EV,
                List.of(
                        part("reading", reading / all, pen),
                        part("crests", crest / all, pen),
                        part("wires", wire / all, pen),
                        part("half angle", angle / all, pen)));
    }

    private static double crest(VAnvil anvil, ReadingUncertainty u, Pen pen) {
        double U_c = pen.write(taken(CREST, u.assumed()), u.crest().mm());
        return U_c * pen.write(PER_CREST, 1 / Math.sin(anvil.angle().rad() / 2));
    }

    /** A pitch diameter that was measured otherwise and given as such. */
    static PitchUncertainty direct(ReadingUncertainty u, Pen pen) {
        double U_E = pen.write(taken(DIRECT, u.assumed()), u.reading().mm());
        return of(U_E, List.of(part("pitch diameter", 1, pen)));
    }

    private static PitchUncertainty of(double mm, List<Part> parts) {
        return new PitchUncertainty(
                Length.ofMm(mm),
                parts.stream().filter(each -> each.percent() > 0).toList());
    }

    /** Of nothing at all there are no shares. */
    private static Part part(String what, double root, Pen pen) {
        double share = Double.isNaN(root) ? 0 : 100 * root * root;
        return new Part(what, share > 0 ? pen.write(SHARE, share) : 0);
    }

    /** The groove and the wire in it, mm and radians. */
    record Setting(double P, double A, double W) {
        double sine() {
            return Math.sin(A);
        }

        private double wire(Rule follows, double c_W, ReadingUncertainty u, Pen pen) {
            double U_W = pen.write(taken(WIRE, u.assumed()), u.wire().mm());
            return pen.write(follows, c_W) * U_W;
        }

        private double angle(ReadingUncertainty u, Pen pen) {
            double U_A = pen.write(taken(FLANK, u.assumed()), u.flank().deg());
            double off = Math.abs(W - P / (2 * Math.cos(A)));
            return U_A * pen.write(PER_ANGLE, Math.cos(A) / (sine() * sine()) * off * Math.PI / 180);
        }
    }
}
