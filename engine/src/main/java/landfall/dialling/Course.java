// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.List;
import landfall.grind.CamProfile;
import landfall.grind.CrestFall;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * How a dial goes over one land: up with the cam, down with what falls on the tap, each in its own form.
 *
 * <p>{@code y = (k + g) s(theta) - g h(theta)}, zero at the edge. On a flank g is the lead over a turn and h straight;
 * on the crests the relief of the crest, level on its margin; on the chamfer with the cam at work the fall of the
 * chamfer. The slope {@code k} is what the dial shows where both run. A straight line through readings of two forms
 * would tilt and bend with where they were taken, so {@code g h} is added back before the fit and k + g is fitted.
 *
 * @param cam s, form of the rise; on the chamfer at rest of the fall that was ground
 * @param own h, form of what falls
 * @param fall g in mm per radian
 */
record Course(CamProfile cam, CamProfile own, double fall) {

    static Course of(DialAsk ask) {
        CamProfile cam = ask.cam();
        TapFacts tap = ask.tap();
        return switch (ask.readings().place()) {
            case END, SHANK -> new Course(cam, CamProfile.straight(), 0);
            case CHAMFER_STILL -> new Course(cam.ground(), CamProfile.straight(), 0);
            case FLANK -> new Course(cam, CamProfile.straight(), tap.lead().mm() / (2 * Math.PI));
            case CREST ->
                new Course(cam, tap.crest().form(), tap.crest().perRadian().mm());
            case CHAMFER_WORKING -> working(cam, ask.beside().aim(), tap);
        };
    }

    /** A reference: the crest falls by its own relief in any case; a shank is round. */
    static Course ofReference(Place place, CrestFall crest) {
        return new Course(
                CamProfile.straight(),
                crest.form(),
                place == Place.CREST ? crest.perRadian().mm() : 0);
    }

    private static Course working(CamProfile cam, @Nullable Aim aim, TapFacts tap) {
        if (aim == null) {
            return new Course(cam, CamProfile.straight(), 0);
        }
        Length found = aim.found();
        return found == null
                ? new Course(cam, cam.ground(), aim.squareFall(tap.chamfer()))
                : new Course(cam, CamProfile.straight(), found.mm());
    }

    /** The readings with what falls on the tap added back: what the cam alone would show. */
    Readings lifted(Readings readings) {
        List<Reading> list = readings.list().stream()
                .map(reading -> new Reading(
                        reading.land(),
                        reading.angle(),
                        reading.value().plus(Length.ofMm(fallen(reading.angle()))),
                        reading.place()))
                .toList();
        return new Readings(list, readings.resolution(), readings.flutes());
    }

    /** g h(theta), mm. */
    double fallen(Angle land) {
        return fall * own.since(land);
    }

    /** What the dial reads at a land angle where it shows a slope k, zero at the edge; mm. */
    double read(double slope, Angle land) {
        return (slope + fall) * cam.since(land) - fallen(land);
    }

    /** The slope as read from the slope of the cam alone. */
    Fitted asRead(Fitted ofCam) {
        return new Fitted(ofCam.value().minus(Length.ofMm(fall)), ofCam.standard(), ofCam.uncertainty());
    }
}
