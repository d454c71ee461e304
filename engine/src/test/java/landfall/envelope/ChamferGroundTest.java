// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import landfall.grind.ChamferRelief;
import landfall.grind.Envelopes;
import landfall.grind.GrindSetup;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The whole chamfer as the wheel leaves it")
class ChamferGroundTest {
    /** A wheel moved point by point in space, spindle steps of a fiftieth of a degree, at seeded places. */
    @Test
    void everyPlaceOfAStraightTapAgreesWithBruteForceToAMicrometre() {
        agrees(Envelopes.m10(4, 40, 60, 15), 1, 60);
        agrees(Envelopes.m10Both(), 2, 60);
    }

    @Test
    void everyPlaceOfASpiralTapAgreesWithBruteForceToAMicrometre() {
        agrees(Envelopes.m10Spiral(), 3, 60);
    }

    private static void agrees(GrindSetup setup, long seed, int places) {
        ChamferGround ground = ChamferGround.of(setup, Errors.NONE);
        var cam = setup.fixture().cam();
        int flutes = setup.tap().flutes().count();
        CamMotion motion = new CamMotion(cam.curve(), cam.lobe(), flutes, List.of());
        int rows = 40 * 4;
        double[][][] grid = ground.rows(rows);
        Random random = new Random(seed);
        double worst = 0;
        for (int i = 0; i < places; i++) {
            int land = random.nextInt(flutes);
            int row = random.nextInt(rows + 1);
            int k = random.nextInt(grid[land][row].length);
            double z = ground.length().mm() * row / rows;
            double round = ground.places().round(land, ground.places().theta(k), z);
            double brute = Envelopes.radius(setup, motion::share, z, round);
            worst = Math.max(worst, Math.abs(grid[land][row][k] - brute));
        }
        assertThat(worst).as("largest difference, mm").isLessThan(0.001);
    }

    @Test
    void onStraightFlutesTheChamferComesOutAtTheSwivel() {
        GrindSetup setup = Envelopes.m10(4, 40, 60, 15);
        ChamferFound found = ChamferFound.of(setup, ChamferGround.of(setup, Errors.NONE), Errors.NONE);
        // a little blunter: the early rise lowers the edge by f'·δ/2, and δ is greater where the radius is smaller
        double rho = setup.motion().setting().rises().radial().mm() / Math.toRadians(60);
        double drop = rho * Math.toRadians(delta(setup, 4.2) - delta(setup, 5.0)) / 2;
        assertThat(Math.tan(found.angle().rad()))
                .isCloseTo(Math.tan(Math.toRadians(9)) + drop / ChamferGround.length(setup), within(5e-4));
        assertThat(found.angle().deg()).isCloseTo(9, within(0.1));
        assertThat(found.swivel().deg() + found.angle().deg()).isCloseTo(18, within(0.005));
        assertThat(found.least().gap().mm()).isPositive();
        assertThat(found.lands()).hasSize(4);
    }

    /** δ of docs/methods/cam-and-gap.md at a radius, for the same fall per radian. */
    private static double delta(GrindSetup setup, double radius) {
        double kappa = Math.toRadians(9);
        double rho = radius / Math.cos(kappa);
        double slope = setup.motion().setting().rises().radial().mm() / Math.toRadians(60);
        double alpha = Math.toDegrees(Math.atan(slope * Math.cos(kappa) / radius));
        return alpha * 75 / (75 + rho) / Math.cos(kappa);
    }

    /** The closed form of docs/methods/cam-and-gap.md sets the swivel so that the wanted angle comes out. */
    @Test
    void onSpiralFlutesTheCorrectedSwivelBringsOutTheWantedAngle() {
        GrindSetup setup = Envelopes.m10Spiral();
        double set = setup.motion().setting().swivel().deg();
        ChamferFound found = ChamferFound.of(setup, ChamferGround.of(setup, Errors.NONE), Errors.NONE);
        double wanted = setup.tap().chamfer().angle().deg();
        assertThat(set).isGreaterThan(wanted + 2);
        assertThat(found.angle().deg()).isCloseTo(wanted, within(0.35));
        assertThat(found.swivel().deg()).isCloseTo(set, within(0.35));
        // and set as if the flutes were straight, it comes out far too slender, as tan κ − f'·2π/L_f says
        var edges = ChamferGround.of(setup, Angle.ofDeg(wanted), Errors.NONE).nodes();
        double slope = (edges[0][8][0] - edges[0][0][0]) / ChamferGround.length(setup);
        double flutes = ChamferRelief.fluteLead(
                        setup.tap().thread(), setup.tap().flutes(), Pen.NONE)
                .mm();
        double perRadian =
                WheelPass.of(setup, Angle.ofDeg(wanted), Errors.NONE).rise().mm() / Math.toRadians(85);
        assertThat(slope).isCloseTo(Math.tan(Math.toRadians(wanted)) - perRadian * 2 * Math.PI / flutes, within(0.012));
    }

    /**
     * A radius smaller by q at the point leaves it q/cos κ thicker there: tan of the angle falls by that over the
     * length.
     */
    @Test
    void aWheelWornAtThePointLeavesABlunterPoint() {
        GrindSetup setup = Envelopes.m10(4, 40, 60, 15);
        Errors worn = new Errors(
                Length.ZERO,
                Angle.ZERO,
                List.of(),
                Length.ZERO,
                new WheelFace(Length.ofMm(0.05), Length.ZERO, Length.ZERO, Length.ZERO));
        ChamferFound found = ChamferFound.of(setup, ChamferGround.of(setup, worn), worn);
        double kappa = Math.toRadians(9);
        ChamferFound round = ChamferFound.of(setup, ChamferGround.of(setup, Errors.NONE), Errors.NONE);
        double expected = Math.tan(round.angle().rad()) - 0.05 / Math.cos(kappa) / ChamferGround.length(setup);
        assertThat(Math.tan(found.angle().rad())).isCloseTo(expected, within(2e-4));
    }

    /** The last land stands proud by three quarters of what the wheel lost over the turn, square to the chamfer. */
    @Test
    void aWheelThatWearsLeavesLandAfterLandHigher() {
        GrindSetup setup = Envelopes.m10(4, 40, 60, 15);
        Errors wearing = new Errors(
                Length.ZERO,
                Angle.ZERO,
                List.of(),
                Length.ZERO,
                new WheelFace(Length.ZERO, Length.ZERO, Length.ZERO, Length.ofMm(0.01)));
        ChamferGround ground = ChamferGround.of(setup, wearing);
        double first = ground.radius(0, Angle.ZERO, Length.ofMm(1)).mm();
        double last = ground.radius(3, Angle.ZERO, Length.ofMm(1)).mm();
        assertThat(last - first).isCloseTo(0.0075 / Math.cos(Math.toRadians(9)), within(1e-6));
    }

    /** A hollow face leaves its own form on the edges: q/cos κ more in the middle, nothing at the ends. */
    @Test
    void aHollowFaceLeavesARoundChamfer() {
        GrindSetup setup = Envelopes.m10(4, 40, 60, 15);
        Errors hollow = new Errors(
                Length.ZERO,
                Angle.ZERO,
                List.of(),
                Length.ZERO,
                new WheelFace(Length.ZERO, Length.ZERO, Length.ofMm(0.02), Length.ZERO));
        ChamferGround with = ChamferGround.of(setup, hollow);
        ChamferGround without = ChamferGround.of(setup, Errors.NONE);
        double length = with.length().mm();
        for (double share : new double[] {0, 0.25, 0.5, 1}) {
            Length at = Length.ofMm(share * length);
            double more = with.radius(1, Angle.ZERO, at).mm()
                    - without.radius(1, Angle.ZERO, at).mm();
            double expected = 0.02 * 4 * share * (1 - share) / Math.cos(Math.toRadians(9));
            assertThat(more).isCloseTo(expected, within(2e-4));
        }
        double middle = NumericGrind.of(setup, hollow).lands().get(0).fall().mm();
        assertThat(middle)
                .isCloseTo(
                        NumericGrind.of(setup, Errors.NONE)
                                .lands()
                                .get(0)
                                .fall()
                                .mm(),
                        within(1e-3));
    }

    /**
     * Run-out e moves an edge by up to e: its chamfer is e/tan κ shorter or longer (check value 45: .015 at 9 deg,
     * .0947).
     */
    @Test
    void runOutMakesOneChamferShorterAndOneLonger() {
        GrindSetup setup = Envelopes.m10(4, 40, 60, 15);
        Errors out = new Errors(Length.ofMm(0.015), Angle.ofDeg(180), List.of(), Length.ZERO, WheelFace.TRUE);
        ChamferFound found = ChamferFound.of(setup, ChamferGround.of(setup, out), out);
        ChamferFound none = ChamferFound.of(setup, ChamferGround.of(setup, Errors.NONE), Errors.NONE);
        double shorter = none.lands().get(0).length().mm()
                - found.lands().get(0).length().mm();
        double longer = found.lands().get(2).length().mm()
                - none.lands().get(2).length().mm();
        assertThat(shorter).isCloseTo(0.0947, within(0.0015));
        assertThat(longer).isCloseTo(0.0947, within(0.0015));
    }
}
