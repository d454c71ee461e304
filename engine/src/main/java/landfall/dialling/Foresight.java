// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import landfall.grind.CamProfile;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Follows the fitted surface through the corrections: each puts one of its terms right, and the dial shows the rest.
 *
 * <p>{@code y = (k + g) s(theta - t0) - g h(theta) + E cos T + F sin T + z_land}, g and h being the {@link Course}'s.
 * Seating takes the run-out of the reference off E and F, or all of it where the chamfer itself or the shank was read;
 * index sets z of one land or t0 to nothing; a rise sets k to the wanted slope; grinding to the lowest edge leaves no
 * E, F and z. The swivel moves none of them: the dial stands square to the chamfer before and after.
 */
final class Foresight {
    private final DialAsk ask;
    private final Course course;
    private final int flutes;
    private final int[] lands;
    private double slope;
    private double startDeg;
    private final double[] runOut;
    private final double[] heights;

    private Foresight(DialAsk ask, DialFindings found, Solution plain) {
        this.ask = ask;
        course = Course.of(ask);
        flutes = ask.tap().flutes();
        Solution fit = plain;
        Phase phase = found.fits().phase();
        if (phase != null) {
            startDeg = phase.start().value().deg();
            Solution late = Fits.orNull(
                    course.lifted(ask.readings()),
                    course.cam().startingAt(phase.start().value()),
                    plain.model.terms);
            fit = late == null ? plain : late;
        }
        LandModel model = fit.model;
        slope = model.terms.slope ? fit.value(model.slope()) : 0;
        runOut = model.terms.runOut ? DialFit.vector(fit) : new double[2];
        heights = new double[flutes];
        for (int land : model.lands) {
            heights[land - 1] = model.terms.heights ? fit.value(model.height(land)) : 0;
        }
        boolean all = model.terms.runOut && !model.terms.heights;
        lands = all ? IntStream.rangeClosed(1, flutes).toArray() : model.lands;
    }

    /** The dial now and after each correction that moves it. */
    static List<Foreseen> of(
            DialAsk ask, DialFindings found, Solution fit, List<Correction> corrections, @Nullable Double wanted) {
        Foresight foresight = new Foresight(ask, found, fit);
        List<Foreseen> all = new ArrayList<>();
        all.add(foresight.seen(0, null));
        for (int i = 0; i < corrections.size(); i++) {
            if (foresight.make(corrections.get(i), found, wanted)) {
                all.add(foresight.seen(i + 1, corrections.get(i).kind()));
            }
        }
        return List.copyOf(all);
    }

    /** Whether the dial in this place shows the correction. */
    private boolean make(Correction correction, DialFindings found, @Nullable Double wanted) {
        switch (correction.kind()) {
            case RESEAT -> seat(found.against(), found.place());
            case INDEX -> {
                if (correction.land() == 0) {
                    startDeg = 0;
                } else {
                    heights[correction.land() - 1] = 0;
                }
            }
            case AXIAL, RADIAL -> slope = wanted == null ? slope : wanted + course.fall();
            case STOCK -> {
                Arrays.fill(runOut, 0);
                Arrays.fill(heights, 0);
            }
            case REFERENCE, SWIVEL, READ_AGAIN -> {
                return false;
            }
        }
        return true;
    }

    private void seat(@Nullable Against against, Place place) {
        if (against == null) {
            Arrays.fill(runOut, 0);
            return;
        }
        double share = Against.share(place, ask.tap().chamfer());
        runOut[0] -= share * against.reference().cosine().value().mm();
        runOut[1] -= share * against.reference().sine().value().mm();
    }

    private Foreseen seen(int number, Correction.@Nullable Kind after) {
        double zero = at(lands[0], Angle.ZERO);
        List<Foreseen.AtLand> list = new ArrayList<>();
        for (int land : lands) {
            list.add(new Foreseen.AtLand(
                    land,
                    Length.ofMm(at(land, Angle.ZERO) - zero),
                    Length.ofMm(at(land, ask.tap().land()) - zero)));
        }
        return new Foreseen(number, after, list);
    }

    private double at(int land, Angle angle) {
        double round = Math.toRadians(360.0 * (land - 1) / flutes) + angle.rad();
        CamProfile cam = startDeg == 0 ? course.cam() : course.cam().startingAt(Angle.ofDeg(startDeg));
        return slope * cam.at(angle)
                - course.fallen(angle)
                + runOut[0] * Math.cos(round)
                + runOut[1] * Math.sin(round)
                + heights[land - 1];
    }
}
