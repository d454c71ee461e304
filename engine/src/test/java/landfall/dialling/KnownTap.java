// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;

/** A tap whose errors are known, read by a hand that shakes and a dial that rounds. */
record KnownTap(double c, double k, double e, double f, double[] heights) {

    static KnownTap even(int flutes, double k, double e, double f) {
        return new KnownTap(0, k, e, f, new double[flutes]);
    }

    KnownTap runningOut(double cosine, double sine) {
        return new KnownTap(c, k, cosine, sine, heights);
    }

    int flutes() {
        return heights.length;
    }

    double at(int land, double deg) {
        double round = Math.toRadians(360.0 * (land - 1) / flutes() + deg);
        return c + k * Math.toRadians(deg) + e * Math.cos(round) + f * Math.sin(round) + heights[land - 1];
    }

    Readings read(double[] degrees, double resolution, double shake, Random random) {
        return read(Place.CHAMFER_STILL, degrees, resolution, shake, random);
    }

    Readings read(Place place, double[] degrees, double resolution, double shake, Random random) {
        List<Reading> list = new ArrayList<>();
        for (int land = 1; land <= flutes(); land++) {
            for (double deg : degrees) {
                double shaken = at(land, deg) + shake * random.nextGaussian();
                list.add(reading(land, deg, Math.rint(shaken / resolution) * resolution, place));
            }
        }
        return new Readings(list, Length.ofMm(resolution), flutes());
    }

    /** Readings without shake or rounding, from a dial of the given division. */
    Readings exact(double[] degrees, double resolution) {
        return exact(Place.CHAMFER_STILL, degrees, resolution);
    }

    Readings exact(Place place, double[] degrees, double resolution) {
        List<Reading> list = new ArrayList<>();
        for (int land = 1; land <= flutes(); land++) {
            for (double deg : degrees) {
                list.add(reading(land, deg, at(land, deg), place));
            }
        }
        return new Readings(list, Length.ofMm(resolution), flutes());
    }

    static Reading reading(int land, double deg, double mm, Place place) {
        return new Reading(land, Angle.ofDeg(deg), Length.ofMm(mm), place);
    }

    static double[] even(double to, int count) {
        double[] degrees = new double[count];
        for (int i = 0; i < count; i++) {
            degrees[i] = to * i / (count - 1);
        }
        return degrees;
    }
}
