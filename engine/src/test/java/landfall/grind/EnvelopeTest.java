// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The closed forms against a wheel that is moved point by point: a cylinder of real radius, swivelled along the
 * chamfer, round which the tap is turned and moved by its cam in steps of a fiftieth of a degree. Nothing of the closed
 * forms is used in {@link BruteWheel}.
 */
@DisplayName("The closed forms against a wheel moved point by point")
class EnvelopeTest {
    private static final double R = 4.6;

    /** Envelope slope is larger than the cam's by 1 + tan²/2: 0.7 % at 7 deg; the test allows twice that. */
    @ParameterizedTest(name = "axial {0}, radial {1} mm/rad, chamfer {2} deg")
    @CsvSource({"0, 0.5648, 9", "3.0, 0, 9", "1.5, 0.25, 9", "0.9, 0.3, 23", "0, 0.4, 4.5"})
    void theFallIsWhatTheCamGives(double a, double b, double kappaDeg) {
        var wheel = new BruteWheel(R, Math.toRadians(kappaDeg), 75, phi -> a * phi, phi -> b * phi);
        double tangent = Math.tan(Math.toRadians(kappaDeg));
        double perRadian = a * tangent + b;
        for (double deg = 10; deg <= 40; deg += 10) {
            double fall = wheel.fall(0, Math.toRadians(deg), -20, 90);
            assertThat(fall)
                    .isCloseTo(perRadian * Math.toRadians(deg), within(0.015 * perRadian * Math.toRadians(deg)));
        }
    }

    /** The gap left on the helical path of the tool: points of the cut surface against points of the land. */
    @Test
    void theWorkingReliefIsWhatIsLeftOnTheToolsHelicalPath() {
        Angle kappa = Angle.ofDeg(9);
        double working = 6;
        GrindSetup setup =
                Bench.setup(Bench.m10Plug(4, 40), Bench.fixture(Bench.cam(4, 60, 10)), Bench.working(working));
        double b = setup.shape().fall().perRadian().mm();
        var wheel = new BruteWheel(R, kappa.rad(), 75, phi -> 0, phi -> b * phi);
        double theta = Math.toRadians(2);
        double land = R - wheel.fall(0, theta, -20, 40);
        // the edge passed this meridian earlier: the tap has advanced since, so the cut surface there is the edge's own
        // radius at a place nearer the point by that advance
        double advance = 1.5 * theta / (2 * Math.PI);
        double cut = R - advance * Math.tan(kappa.rad());
        double gapSquare = (cut - land) * Math.cos(kappa.rad());
        double path = R * theta;
        assertThat(Math.toDegrees(Math.atan(gapSquare / path))).isCloseTo(working, within(0.12));
    }

    /**
     * Cases that the land-based form calls clear and the wheel cuts, and cases that are clear; envelope by brute force.
     */
    @ParameterizedTest(name = "{0} lobes, rise {1}, return {2}, radius {3}: clear {4}")
    @CsvSource({
        "4, 65, 22, 4.6, false",
        "4, 66, 20, 4.6, false",
        "3, 85, 30, 3.6, false",
        "4, 45, 34, 4.6, true",
        "4, 50, 30, 4.6, true",
        "3, 60, 45, 4.6, true",
        "6, 30, 20, 9, true",
        "6, 40, 18, 9, false",
    })
    void theGapIsClearWhenTheWheelLeavesTheNextEdgeAlone(int lobes, double rise, double back, double r, boolean clear) {
        double perRadian = r * Math.tan(Math.toRadians(7));
        double cut = BruteWheel.transverse(r, 75, lobes, rise, back, perRadian).cutOfNextEdge();
        Gap gap = gapOf(lobes, rise, back, r);
        assertThat(gap.clear()).isEqualTo(clear);
        if (clear) {
            assertThat(cut).isLessThan(0.002);
        } else {
            assertThat(cut).isGreaterThan(0.01);
        }
    }

    /** Where the closed form sets the border, brute force agrees to within the degree of safety and a half. */
    @Test
    void theNeededAngleIsThatOfTheEnvelope() {
        double perRadian = R * Math.tan(Math.toRadians(7));
        for (double back = 10; back <= 30; back += 5) {
            double least = 360;
            for (double rise = 80; rise >= 30; rise -= 0.25) {
                if (rise + back <= 90
                        && BruteWheel.transverse(R, 75, 4, rise, back, perRadian)
                                        .cutOfNextEdge()
                                > 0.0015) {
                    least = rise;
                }
            }
            // the envelope starts to cut at this rise; the closed form must already say "not clear" there
            Gap gap = gapOf(4, least, back, R);
            assertThat(gap.clear()).as("rise %.2f, return %.0f", least, back).isFalse();
            Gap shorter = gapOf(4, least - 5, back, R);
            assertThat(shorter.have().deg() - shorter.needed().deg()).isLessThan(10.5);
        }
    }

    private static Gap gapOf(int lobes, double rise, double back, double r) {
        Angle kappa = Angle.ofDeg(1e-4);
        Length radius = Length.ofMm(r);
        var place = new ChamferPlace(radius, radius, kappa, Length.ofMm(1.5), Angle.ofDeg(20));
        double perRadian = r * Math.tan(Math.toRadians(7));
        var relief = new Relief(Angle.ofDeg(6), Angle.ofDeg(7), Angle.ofDeg(1), Angle.ofDeg(7));
        var fall = new Fall(Length.ofMm(perRadian), Length.ZERO, Length.ZERO, Length.ZERO);
        Fixture fixture = Bench.fixture(Bench.cam(lobes, rise, back));
        var phase = new Phase(Angle.ofDeg(6.6), Angle.ZERO, Length.ZERO, Angle.ZERO);
        var grinding = new Grinding(place, relief, fall, fixture, phase, Length.ofMm(0.01));
        return Gap.of(grinding, lobes, perRadian * Math.toRadians(rise), landfall.working.Pen.NONE);
    }

    /**
     * δ within 5 % near the edge: the wheel's deepest place on land angle θ is met when the centre line stands at θ +
     * δ. Further back the land's own radius is smaller and δ grows a little (5.8 % at 20 deg here).
     */
    @Test
    void theGroundPlaceTrailsTheCentreLineByDelta() {
        GrindSetup setup = Bench.setup(Bench.m10Plug(4, 40), Bench.fixture(Bench.cam(4, 60, 10)), Bench.working(6));
        double b = setup.shape().fall().perRadian().mm();
        var wheel = new BruteWheel(R, Math.toRadians(9), 75, phi -> 0, phi -> b * phi);
        double contact = Math.toDegrees(wheel.contact(0, Math.toRadians(3), -20, 60)) - 3;
        double delta = setup.motion().phase().delta().deg();
        assertThat(contact).isCloseTo(delta, within(0.05 * delta));
    }
}
