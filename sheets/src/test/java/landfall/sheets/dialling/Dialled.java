// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dialling;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import landfall.dialling.Aim;
import landfall.dialling.Beside;
import landfall.dialling.DialAsk;
import landfall.dialling.DialFindings;
import landfall.dialling.Dialling;
import landfall.dialling.Reading;
import landfall.dialling.Readings;
import landfall.dialling.TapFacts;
import landfall.grind.CamProfile;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * Readings of an M10 whose errors are known, and what was found of them: square on the chamfer with a fixture, or on
 * the crests without one, where nothing tells what they should be.
 */
record Dialled(DialAsk ask, DialFindings found) {
    /** A radial cam that gives 6 degrees of working relief on it. */
    private static final Aim RADIAL =
            new Aim(Length.ZERO, Length.ofMm(0.52777), Angle.ofDeg(60), Aim.Side.RADIAL, null);

    /**
     * @param flutes lands round the tap
     * @param shake of the hand, mm
     * @param slip added to the third reading of the second land, mm
     */
    record Wanted(int flutes, double shake, double slip, boolean aimed) {}

    static Dialled of(Wanted wanted) {
        Place place = wanted.aimed() ? Place.CHAMFER_STILL : Place.CREST;
        Random random = new Random(11);
        int flutes = wanted.flutes();
        Angle land = Angle.ofDeg(Math.min(40, 240.0 / flutes));
        List<Reading> list = new ArrayList<>();
        for (int number = 1; number <= flutes; number++) {
            for (int step = 0; step <= 4; step++) {
                double deg = land.deg() * step / 4;
                double round = Math.toRadians(360.0 * (number - 1) / flutes + deg);
                double slip = number == 2 && step == 2 ? wanted.slip() : 0;
                double at = 0.013 - 0.45 * Math.toRadians(deg) + 0.02 * Math.cos(round) - 0.011 * Math.sin(round);
                double shaken = at + slip + wanted.shake() * random.nextGaussian();
                Length read = Length.ofMm(Math.rint(shaken / 0.002) * 0.002);
                list.add(new Reading(number, Angle.ofDeg(deg), read, place));
            }
        }
        TapFacts tap = TapFacts.straight(flutes, Length.ofMm(1.5), Angle.ofDeg(9), Length.ofMm(4.6), land);
        Beside beside = wanted.aimed() ? new Beside(null, null, RADIAL) : Beside.NOTHING;
        Readings readings = new Readings(list, Length.ofMm(0.01), flutes);
        DialAsk ask = new DialAsk(readings, CamProfile.straight(), tap, beside);
        return new Dialled(ask, Dialling.of(ask).value());
    }
}
