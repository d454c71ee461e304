// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.List;
import landfall.fault.OutOfRange;
import landfall.grind.CamProfile;
import org.jspecify.annotations.Nullable;

/** Which model a set of readings can carry. */
final class Fits {
    private Fits() {}

    /**
     * The fullest model that can be told apart from these readings: heights on three or more lands, else a common zero,
     * else the rise alone.
     */
    static Solution fullest(Readings readings, CamProfile cam) {
        if (readings.anglesDeg().length < 2) {
            throw new OutOfRange(
                    "readings",
                    readings.list().size() + " at one land angle",
                    "at two or more land angles, or there is no slope in them",
                    "read each land at its edge, twice between, and at its heel");
        }
        if (readings.lands().length >= 3) {
            Solution heights = orNull(readings, cam, Terms.HEIGHTS);
            if (heights != null) {
                return heights;
            }
        }
        for (Terms terms : List.of(Terms.COMMON_ZERO, Terms.RISE_ONLY)) {
            Solution found = orNull(readings, cam, terms);
            if (found != null) {
                return found;
            }
        }
        throw new OutOfRange(
                "readings",
                readings.list().size() + " within " + span(readings) + " deg",
                "spread over some degrees of the land, or there is no slope in them",
                "read each land at its edge, twice between, and at its heel");
    }

    /** The run-out of a thread or a shank: with the rise if the readings can carry it, else without. */
    static Solution reference(Readings readings) {
        for (Terms terms : List.of(Terms.COMMON_ZERO, Terms.RUN_OUT_ONLY)) {
            Solution found = orNull(readings, CamProfile.straight(), terms);
            if (found != null) {
                return found;
            }
        }
        throw new OutOfRange(
                "reference readings",
                readings.list().size() + " on " + readings.lands().length + " lands",
                "three or more spread round the tap",
                "read the shank or the crests behind the edge of each land");
    }

    /** The fit of one model, or nothing where its terms cannot be told apart. */
    static @Nullable Solution orNull(Readings readings, CamProfile cam, Terms terms) {
        LandModel model = new LandModel(readings, cam, terms);
        return model.design.isSound()
                ? new Solution(model, readings.values(), readings.resolution().mm())
                : null;
    }

    private static String span(Readings readings) {
        double[] angles = readings.anglesDeg();
        return Numbers.plain(angles[angles.length - 1] - angles[0]);
    }
}
