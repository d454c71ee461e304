// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Limits;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The form of a lobe")
class CamCurveTest {
    private static final Angle B = Angle.ofDeg(45);

    private static List<CamCurve> curves() {
        return List.of(
                new CamCurve.Straight(),
                new CamCurve.Circle(Angle.ofDeg(90)),
                new CamCurve.Circle(Angle.ofDeg(60)),
                new CamCurve.Points(List.of(
                        new CamCurve.Point(Angle.ZERO, 0),
                        new CamCurve.Point(Angle.ofDeg(20), 0.5),
                        new CamCurve.Point(B, 1))));
    }

    @Test
    void everyCurveRunsFromNothingToTheWhole() {
        for (CamCurve curve : curves()) {
            assertThat(curve.share(Angle.ofDeg(-3), B)).isZero();
            assertThat(curve.share(Angle.ZERO, B)).isZero();
            assertThat(curve.share(B, B)).isCloseTo(1, within(1e-12));
            assertThat(curve.share(Angle.ofDeg(60), B)).isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void theSlopeIsTheDerivativeOfTheShare() {
        double h = 1e-4;
        for (CamCurve curve : curves()) {
            for (double x = 1; x < 44; x += 3.3) {
                double rise = curve.share(Angle.ofDeg(x + h), B) - curve.share(Angle.ofDeg(x - h), B);
                assertThat(curve.slope(Angle.ofDeg(x), B)).isCloseTo(rise / Math.toRadians(2 * h), within(1e-5));
            }
        }
    }

    /**
     * Same 8 deg at the edge on r 5, 45 deg of land: fall .5519 straight, .4969 with the offset at 90 deg, .6157 at 60
     * (section c of the geometry notes, checked there against an own numeric model).
     */
    @Test
    void anOffsetCircleThinsOrThickensTowardsTheHeel() {
        double edge = 5 * Math.tan(Math.toRadians(8));
        assertThat(edge / curves().get(0).slope(Angle.ZERO, B)).isCloseTo(0.5519, within(5e-5));
        assertThat(edge / curves().get(1).slope(Angle.ZERO, B)).isCloseTo(0.4969, within(5e-5));
        assertThat(edge / curves().get(2).slope(Angle.ZERO, B)).isCloseTo(0.6157, within(5e-5));
    }

    @Test
    void aTableThatGoesBackIsRefused() {
        assertThatThrownBy(() -> new CamCurve.Points(List.of(
                        new CamCurve.Point(Angle.ZERO, 0),
                        new CamCurve.Point(Angle.ofDeg(30), 0.6),
                        new CamCurve.Point(Angle.ofDeg(20), 1))))
                .hasMessage(
                        "cam.table: \"row 3\" must be further round than the row before, and no lower. To mend: sort "
                                + "the"
                                + " table by angle and check this reading.");
    }

    @Test
    void riseAndReturnMustFitTheirLobe() {
        assertThatThrownBy(() -> new Cam(
                        4,
                        new CamCurve.Straight(),
                        new Lobe(Angle.ZERO, Angle.ofDeg(70), Angle.ofDeg(30)),
                        null,
                        Limits.ofMm(0, 1)))
                .hasMessage("cam.riseAngle: \"70.00 deg with a return of 30.00 deg\" must be at most 360/4 = 90.00 deg "
                        + "together"
                        + " with the return. To mend: measure rise and return of one lobe again, or count "
                        + "the lobes.");
    }

    @Test
    void aCircleThatFallsAgainBeforeItsRiseEndsIsRefused() {
        Lobe lobe = new Lobe(Angle.ZERO, Angle.ofDeg(70), Angle.ofDeg(10));
        assertThatThrownBy(() -> new Cam(4, new CamCurve.Circle(Angle.ofDeg(120)), lobe, null, Limits.ofMm(0, 1)))
                .hasMessage("cam.riseAngle: \"70.00 deg\" must be at most 60.00 deg: from there a circle with this"
                        + " phase falls"
                        + " again. To mend: measure the phase and the rise again.");
    }
}
