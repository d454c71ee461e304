// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.ArrayList;
import java.util.List;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The slope that a dial should show in each place when the wanted rises are set.
 *
 * <p>End a'; shank and crest b' (on a crest without relief of its own); flank a' - L/2pi; chamfer at rest -(a' sin kap
 * + b' cos kap); chamfer at work the same upwards, less the fall of the chamfer as found.
 */
final class Aims {
    private static final double STEP_DEG = 5;

    private Aims() {}

    /** Wanted slope in mm per radian, or null where it hangs on a relief that was not dialled. */
    static @Nullable Double slope(Place place, TapFacts tap, @Nullable Aim aim) {
        if (aim == null) {
            return place == Place.CHAMFER_WORKING ? Double.valueOf(0) : null;
        }
        double square = aim.squareFall(tap.chamfer());
        return switch (place) {
            case END -> aim.axial().mm();
            case SHANK, CREST -> aim.radial().mm();
            case FLANK -> aim.axial().mm() - tap.lead().mm() / (2 * Math.PI);
            case CHAMFER_STILL -> -square;
            case CHAMFER_WORKING -> {
                Length found = aim.found();
                yield found == null ? Double.valueOf(0) : Double.valueOf(square - found.mm());
            }
        };
    }

    /** Readings from edge to heel every five degrees. */
    static List<Target> targets(double slope, CamProfile cam, Angle land) {
        List<Target> targets = new ArrayList<>();
        double zero = cam.at(Angle.ZERO);
        for (double deg = 0; deg < land.deg() - 1e-9; deg += STEP_DEG) {
            targets.add(target(slope, cam, Angle.ofDeg(deg), zero));
        }
        targets.add(target(slope, cam, land, zero));
        return targets;
    }

    private static Target target(double slope, CamProfile cam, Angle land, double zero) {
        return new Target(land, Length.ofMm(slope * (cam.at(land) - zero)));
    }
}
