// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import landfall.grind.CamProfile;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Readings taken by a stylus that runs into a solid: a cone with relieved lands, its axis off the spindle's, turned
 * step by step. Nothing of the fitted model is used to make them.
 */
@DisplayName("Readings taken off a solid tap")
class SolidTapTest {
    private static final double KAPPA = Math.toRadians(9);
    private static final double R0 = 4.6;
    private static final double FALL = 0.48348;
    private static final double TURNED = Math.atan(FALL / R0);
    private static final double OFF = 0.02;
    private static final double TOWARDS = Math.toRadians(200);
    private static final double[] PROUD = {0.006, -0.002, -0.004};

    @Test
    void giveBackReliefRunOutHeightsAndShares() {
        DialFindings found = Dialling.of(new DialAsk(
                        readings(Place.CHAMFER_STILL), CamProfile.straight(), DiallingTest.M10, Beside.NOTHING))
                .value();
        ReliefFound relief = requireNonNull(found.relief());
        // the stylus sinks along its own line, so second order in fall over radius is left
        assertThat(relief.fall().mm()).isEqualTo(FALL, within(0.003));
        RunOut runOut = requireNonNull(found.runOut());
        assertThat(runOut.eccentricity().value().mm())
                .isEqualTo(OFF * Math.cos(KAPPA) / Math.cos(TURNED), within(3e-4));
        assertThat(requireNonNull(runOut.direction()).value().deg())
                .isEqualTo(200 - Math.toDegrees(TURNED), within(1.0));
        for (LandFound land : found.lands().lands()) {
            double high = PROUD[land.land() - 1] * Math.cos(KAPPA);
            assertThat(requireNonNull(land.height()).value().mm()).isEqualTo(high, within(3e-4));
        }
        // of e/h0 = .25, a tenth is turned square to itself
        assertThat(shares(found)).containsExactly(expected(), within(1.6));
    }

    @Test
    void takenWithTheShankAsReferenceLeaveATenthOfItsRunOut() {
        Readings shank = readings(Place.SHANK);
        DialFindings found = Dialling.of(new DialAsk(
                        readings(Place.CHAMFER_STILL),
                        CamProfile.straight(),
                        DiallingTest.M10,
                        new Beside(shank, null, null)))
                .value();
        assertThat(requireNonNull(found.against())
                        .reference()
                        .eccentricity()
                        .value()
                        .mm())
                .isEqualTo(OFF, within(1e-4));
        // what the relief turns of the reference's run-out stays behind, and is said
        double left = OFF * Math.cos(KAPPA) * Math.tan(TURNED);
        assertThat(requireNonNull(found.runOut()).eccentricity().value().mm()).isEqualTo(left, within(3e-4));
        assertThat(found.cautions())
                .filteredOn(caution -> caution.code().equals("reliefTurnsRunOut"))
                .extracting(caution ->
                        caution.text().contains(Numbers.both(Length.ofMm(left)).substring(0, 5)))
                .containsExactly(true);
    }

    private static double[] shares(DialFindings found) {
        return found.lands().lands().stream()
                .mapToDouble(land -> requireNonNull(land.share()).percent())
                .toArray();
    }

    /** Teeth as they stand to the spindle, cutting one after the other. */
    private static double[] expected() {
        double h0 = 0.5 * Math.tan(KAPPA);
        double[] e = new double[3];
        for (int i = 0; i < 3; i++) {
            e[i] = PROUD[i] + OFF * Math.cos(2 * Math.PI * i / 3 - TOWARDS);
        }
        double[] share = new double[3];
        for (int i = 0; i < 3; i++) {
            share[i] = 100 * (h0 + e[i] - e[(i + 2) % 3]) / (3 * h0);
        }
        return share;
    }

    private static Readings readings(Place place) {
        List<Reading> list = new ArrayList<>();
        for (int land = 1; land <= 3; land++) {
            for (double deg = 0; deg <= 40; deg += 8) {
                double read = place == Place.SHANK ? shank(land, deg) : chamfer(land, deg);
                list.add(new Reading(land, Angle.ofDeg(deg), Length.ofMm(read), place));
            }
        }
        return new Readings(list, Length.ofMm(1e-5), 3);
    }

    /** Along the line square to the chamfer through the middle of the chamfer, by bisection. */
    private static double chamfer(int land, double deg) {
        double turned = Math.toRadians(120 * (land - 1) + deg);
        double low = -0.6;
        double high = 0.3;
        for (int i = 0; i < 60; i++) {
            double s = (low + high) / 2;
            double radial = R0 + s * Math.cos(KAPPA);
            double along = -s * Math.sin(KAPPA);
            if (isInside(radial, along, turned, land)) {
                low = s;
            } else {
                high = s;
            }
        }
        return (low + high) / 2;
    }

    /** Whether the stylus' tip is inside the metal of a land, the tap's axis off the spindle's. */
    private static boolean isInside(double radial, double along, double turned, int land) {
        double x = radial * Math.cos(turned) - OFF * Math.cos(TOWARDS);
        double y = radial * Math.sin(turned) - OFF * Math.sin(TOWARDS);
        double behindEdge = Math.IEEEremainder(Math.atan2(y, x) - Math.toRadians(120 * (land - 1)), 2 * Math.PI);
        double surface = R0 + along * Math.tan(KAPPA) - FALL * behindEdge + PROUD[land - 1];
        return Math.hypot(x, y) < surface;
    }

    /** A round shank of radius 4 about the tap's own axis. */
    private static double shank(int land, double deg) {
        double towards = Math.toRadians(120 * (land - 1) + deg) - TOWARDS;
        return OFF * Math.cos(towards) + Math.sqrt(16 - Math.pow(OFF * Math.sin(towards), 2)) - 4;
    }
}
