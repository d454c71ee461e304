// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.List;
import landfall.dialling.Aim.Side;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * From a slope that is not the wanted one to the change of the fixture's rise over one lobe: {@code (k_w - k)/g * B}, g
 * being what one unit of rise does to the reading in that place.
 */
final class RiseCorrection {
    static final Rule SCREW =
            Rule.given("p_s", "mm", "change of the rise over one lobe for one turn of its adjusting screw");
    static final Rule AXIAL_TURNS = turns("abs(Δa)/p_s");
    static final Rule RADIAL_TURNS = turns("abs(Δb)/p_s");

    private RiseCorrection() {}

    private static Rule turns(String formula) {
        return new Rule("n_s", formula, "1", Corrections.ORDER, Trust.DERIVED, "turns of the adjusting screw");
    }

    /** @param symbol of the slope in the working */
    static List<Correction> of(DialAsk ask, Fitted slope, String symbol, @Nullable Double wanted, Pen pen) {
        Aim aim = ask.beside().aim();
        if (wanted == null || aim == null) {
            return List.of();
        }
        Place place = ask.readings().place();
        double k_w = pen.write(
                Rule.given("k_w", "mm/rad", "slope that the dial should show here for the wanted rises"), wanted);
        if (Math.abs(k_w - slope.value().mm()) <= slope.uncertainty().mm()) {
            return List.of();
        }
        Side side = side(place, aim);
        double kappa = ask.tap().chamfer().rad();
        double lobe = pen.write(
                Rule.given("B", "deg", "turn over which one lobe would reach its whole rise as it begins"),
                aim.lobe().deg());
        double gain = gain(place, side, kappa, aim.set(ask.tap().chamfer()));
        double by = pen.write(rule(place, side, symbol), (k_w - slope.value().mm()) / gain * Math.toRadians(lobe));
        String which = side == Side.AXIAL ? "axial rise (cam screw)" : "radial rise";
        return List.of(new Correction(
                side == Side.AXIAL ? Correction.Kind.AXIAL : Correction.Kind.RADIAL,
                0,
                (by > 0 ? "increase the " : "decrease the ") + which + " over one lobe",
                Length.ofMm(Math.abs(by)),
                null,
                turns(side, by, aim, pen)));
    }

    private static @Nullable Double turns(Side side, double by, Aim aim, Pen pen) {
        Length screw = side == Side.AXIAL ? aim.screws().axial() : aim.screws().radial();
        if (screw == null) {
            return null;
        }
        double p_s = pen.write(SCREW, screw.mm());
        return pen.write(side == Side.AXIAL ? AXIAL_TURNS : RADIAL_TURNS, Math.abs(by) / p_s);
    }

    /** A dial on the end or a flank sees the axial rise, one on shank or crest the radial one. */
    private static Side side(Place place, Aim aim) {
        return switch (place) {
            case END, FLANK -> Side.AXIAL;
            case SHANK, CREST -> Side.RADIAL;
            case CHAMFER_STILL, CHAMFER_WORKING -> aim.turn();
        };
    }

    private static double gain(Place place, Side side, double kappa, Angle swivel) {
        double square = Math.cos(kappa) * (side == Side.AXIAL ? Math.tan(swivel.rad()) : 1);
        return switch (place) {
            case END, FLANK, SHANK, CREST -> 1;
            case CHAMFER_STILL -> -square;
            case CHAMFER_WORKING -> square;
        };
    }

    private static Rule rule(Place place, Side side, String symbol) {
        String square = side == Side.AXIAL ? "(cos(κ)*tan(κ_s))" : "cos(κ)";
        String formula = switch (place) {
            case END, FLANK, SHANK, CREST -> "(k_w - %s)*B*pi/180".formatted(symbol);
            case CHAMFER_STILL -> "(%s - k_w)/%s*B*pi/180".formatted(symbol, square);
            case CHAMFER_WORKING -> "(k_w - %s)/%s*B*pi/180".formatted(symbol, square);
        };
        return new Rule(
                side == Side.AXIAL ? "Δa" : "Δb",
                formula,
                "mm",
                Corrections.ORDER,
                Trust.DERIVED,
                "change of the rise over one lobe");
    }
}
