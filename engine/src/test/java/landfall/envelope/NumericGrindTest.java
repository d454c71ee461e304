// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import landfall.fault.Caution;
import landfall.grind.CamCurve;
import landfall.grind.Envelopes;
import landfall.grind.Lobe;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The numerical grind")
class NumericGrindTest {
    private static final Length WHEEL = Length.ofMm(75);

    private static CamMotion cam(int lobes, double rise, double back) {
        return new CamMotion(
                new CamCurve.Straight(), new Lobe(Angle.ZERO, Angle.ofDeg(rise), Angle.ofDeg(back)), lobes, List.of());
    }

    /** Points by brute force: spindle steps of a fiftieth of a degree, a cylinder in space, no plane section. */
    @Test
    void theSectionAgreesWithAWheelMovedPointByPointToAMicrometre() {
        Random random = new Random(8);
        for (int i = 0; i < 40; i++) {
            double r = 2 + 8 * random.nextDouble();
            double kappa = Math.toRadians(3 + 25 * random.nextDouble());
            int lobes = 2 + random.nextInt(4);
            double rise = 180.0 / lobes + 20 * random.nextDouble();
            double back = 360.0 / lobes - rise - 1;
            double b = 0.1 * r * Math.toRadians(rise);
            CamMotion cam = cam(lobes, rise, Math.max(1, back));
            var pass = new WheelPass(WHEEL, Angle.ofRad(kappa), Length.ofMm(b), Length.ZERO);
            var section = new SectionEnvelope(pass, cam, r);
            double theta = Math.toRadians(rise * random.nextDouble());
            double brute = Envelopes.radius(r, kappa, WHEEL.mm(), phi -> b * cam.share(phi), theta);
            assertThat(section.radius(theta)).isCloseTo(brute, within(0.001));
        }
    }

    @Test
    void itAgreesWithTheClosedFormsWithinTheirOrder() {
        var setup = Envelopes.m10(4, 40, 60, 15);
        NumericGrind grind = NumericGrind.of(setup, Errors.NONE);
        double fall = setup.shape().fall().radial().mm();
        assertThat(grind.lands()).hasSize(4).allSatisfy(land -> {
            assertThat(land.fall().mm()).isCloseTo(fall, within(0.015 * fall));
            assertThat(land.working().deg()).isCloseTo(6, within(0.15));
            assertThat(land.edge().mm()).isCloseTo(0, within(1e-6));
            assertThat(land.leastGap().mm()).isPositive();
            assertThat(land.clipped().mm()).isLessThan(1e-4);
            assertThat(land.trail().deg())
                    .isCloseTo(setup.motion().phase().delta().deg(), within(0.4));
        });
        assertThat(grind.cautions()).isEmpty();
        assertThat(grind.shares()).allSatisfy(share -> assertThat(share.share()).isCloseTo(0.25, within(1e-6)));
    }

    @Test
    void aLobeThatIsNotBackInTimeCutsTheNextEdgeAndIsSaid() {
        var setup = Envelopes.m10(4, 40, 66, 20);
        assertThat(setup.motion().gap().clear()).isFalse();
        NumericGrind grind = NumericGrind.of(setup, Errors.NONE);
        assertThat(grind.lands())
                .allSatisfy(land -> assertThat(land.clipped().mm()).isGreaterThan(0.05));
        assertThat(grind.cautions().stream().map(Caution::code)).contains("edgeClipped", "landDrags");
    }

    /**
     * Run-out e on 3 flutes with h0 = (P/N)·tan κ = .0792: shares .428, .239, .333 with tooth 1 highest (check value
     * 41).
     */
    @Test
    void runOutLoadsTheTeethAsTheCheckValuesSay() {
        var setup = Envelopes.m10(3, 40, 60, 30);
        // the thread's axis away from the wheel where land 1 is ground leaves that land proud of its own axis
        Errors errors = new Errors(Length.ofMm(0.015), Angle.ofDeg(180), List.of(), Length.ZERO, WheelFace.TRUE);
        NumericGrind grind = NumericGrind.of(setup, errors);
        assertThat(grind.shares().get(0).share()).isCloseTo(0.428, within(0.001));
        assertThat(grind.shares().get(1).share()).isCloseTo(0.239, within(0.001));
        assertThat(grind.shares().get(2).share()).isCloseTo(0.333, within(0.001));
        assertThat(grind.shares().stream()
                        .mapToDouble(NumericGrind.Share::share)
                        .sum())
                .isCloseTo(1, within(1e-9));
    }

    /** e = f'·Δφ: .53 mm/rad by .5 deg is .0046 mm on that land. */
    @Test
    void aLobeThatComesLateLeavesItsLandProud() {
        var setup = Envelopes.m10(3, 40, 60, 30);
        Errors errors = new Errors(
                Length.ZERO,
                Angle.ZERO,
                List.of(Angle.ofDeg(0.5), Angle.ZERO, Angle.ZERO),
                Length.ZERO,
                WheelFace.TRUE);
        NumericGrind grind = NumericGrind.of(setup, errors);
        double proud =
                grind.lands().get(0).edge().mm() - grind.lands().get(1).edge().mm();
        assertThat(proud).isCloseTo(setup.shape().fall().perRadian().mm() * Math.toRadians(0.5), within(0.0003));
    }

    /** 1 mm above centre on a wheel of 75: the slope moves by 0.02 % only (geometry notes, section d). */
    @Test
    void aWheelOffCentreTurnsThePhaseAndLeavesTheSlope() {
        var setup = Envelopes.m10(3, 40, 75, 30);
        Errors high = new Errors(Length.ZERO, Angle.ZERO, List.of(), Length.ofMm(-0.4), WheelFace.TRUE);
        double on = slope(NumericGrind.of(setup, Errors.NONE));
        double off = slope(NumericGrind.of(setup, high));
        assertThat(off).isCloseTo(on, within(0.002 * on));
    }

    private static double slope(NumericGrind grind) {
        var places = grind.lands().get(0).places();
        return places.get(30).fall().mm() - places.get(20).fall().mm();
    }
}
