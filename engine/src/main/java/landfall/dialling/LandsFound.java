// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * The lands side by side, and what each cuts.
 *
 * <p>A tooth's edge stands where its height and the run-out together put it, less the run-out of the thread itself.
 * That sum is told well even where height and run-out are not told apart.
 *
 * @param lands in order
 * @param worst largest chip over the mean chip; none where the shares are not told
 */
public record LandsFound(List<LandFound> lands, @Nullable Double worst) {
    private static final Source CHIPS = Source.of("derived", "docs/methods/dialling.md, load share");
    static final Rule MEAN_CHIP =
            new Rule("h_0", "L/N*tan(κ)", "mm", CHIPS, Trust.DERIVED, "radial chip of a tooth when all are alike");

    public LandsFound {
        lands = List.copyOf(lands);
    }

    /** Land i's edge above the mean, as read: a sum of fitted terms. */
    static Rule edge(int land) {
        return Rule.fitted("y_" + land, "mm", CHIPS, "edge of land %d above the mean, as read".formatted(land));
    }

    static Rule proud(int land, int flutes, boolean reference) {
        double at = 360.0 * (land - 1) / flutes;
        String less = reference ? " - E_r*cos(%s) - F_r*sin(%s)".formatted(at, at) : "";
        return new Rule(
                "e_" + land,
                "y_%d/cos(κ)%s".formatted(land, less),
                "mm",
                CHIPS,
                Trust.DERIVED,
                "edge of land %d proud, radially".formatted(land));
    }

    static Rule share(int land) {
        return new Rule(
                "q_" + land,
                "100*h_%d/(N*h_0)".formatted(land),
                "%",
                CHIPS,
                Trust.DERIVED,
                "share of the chip that tooth %d cuts".formatted(land));
    }

    static LandsFound of(DialAsk ask, Solution found, @Nullable Solution reference, Pen pen) {
        int flutes = ask.tap().flutes();
        // with all lands taken as one height the run-out alone tells where the edge of a land stands that was not read
        boolean all = found.model.lands.length == flutes || !found.model.terms.heights;
        boolean told = ask.readings().place() == Place.CHAMFER_STILL && found.model.terms.runOut && all && flutes > 1;
        LandEdges edges = new LandEdges(ask, found, reference);
        LoadShare[] shares = told ? shares(ask, edges, pen) : new LoadShare[flutes];
        List<LandFound> lands = new ArrayList<>();
        for (int land = 1; land <= flutes; land++) {
            boolean read = Arrays.binarySearch(found.model.lands, land) >= 0;
            boolean heights = found.model.terms.heights && read;
            lands.add(new LandFound(
                    land,
                    heights ? found.fitted(found.model.height(land)) : null,
                    found.model.terms.runOut && (read || !found.model.terms.heights) ? edges.fitted(land) : null,
                    shares[land - 1]));
        }
        return new LandsFound(lands, told ? worst(shares, pen) : null);
    }

    private static double worst(LoadShare[] shares, Pen pen) {
        double greatest =
                Arrays.stream(shares).mapToDouble(LoadShare::percent).max().orElseThrow();
        return pen.write(Chips.worst(shares.length), greatest * shares.length / 100);
    }

    private static LoadShare[] shares(DialAsk ask, LandEdges edges, Pen pen) {
        Angle chamfer = ask.tap().chamfer();
        int flutes = ask.tap().flutes();
        double h0 = pen.write(MEAN_CHIP, ask.tap().lead().mm() / flutes * Math.tan(chamfer.rad()));
        double[] e = new double[flutes];
        for (int i = 0; i < flutes; i++) {
            pen.write(edge(i + 1), edges.asRead(i + 1));
            e[i] = pen.write(proud(i + 1, flutes, edges.hasReference()), edges.proud(i + 1));
        }
        double[] h = Chips.of(h0, e);
        LoadShare[] shares = new LoadShare[flutes];
        for (int i = 0; i < flutes; i++) {
            pen.write(Chips.rule(i + 1, flutes), h[i]);
            double percent = pen.write(share(i + 1), 100 * h[i] / (flutes * h0));
            int before = Math.floorMod(i - Chips.before(h0, e, i), flutes);
            double uncertainty = 100 * edges.expandedDifference(i + 1, before + 1) / (flutes * h0);
            shares[i] = new LoadShare(percent, uncertainty);
        }
        return shares;
    }
}
