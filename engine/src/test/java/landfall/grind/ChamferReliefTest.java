// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.FluteForm;
import landfall.tap.FluteKind;
import landfall.tap.Flutes;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Relief of the chamfer")
class ChamferReliefTest {
    private static final Angle FORTY = Angle.ofDeg(40);

    private static ScrewThread thread(String name) {
        return name.equals("M10x1.5") ? Bench.M10 : Bench.HALF_13;
    }

    @ParameterizedTest(name = "{0}, chamfer {1}, radius {2} mm, wanted {3}: {4} mm/rad")
    @CsvFileSource(resources = "/reference/chamfer-relief.csv")
    void agreesWithTheCheckValues(
            String name,
            double kappaDeg,
            double radius,
            double wanted,
            double perRadian,
            double a,
            double b,
            double c) {
        Angle kappa = Angle.ofDeg(kappaDeg);
        Length r = Length.ofMm(radius);
        Length lead = thread(name).lead().perTurn();
        Angle loss = ChamferRelief.loss(r, kappa, lead, Pen.NONE);
        Relief relief = ChamferRelief.forWorking(Angle.ofDeg(wanted), loss, kappa, Pen.NONE);
        Fall fall = ChamferRelief.fall(relief, r, kappa, FORTY, Pen.NONE);
        assertThat(fall.perRadian().mm()).isCloseTo(perRadian, within(perRadian * 5e-5));
        assertThat(fall.axial().mm()).isCloseTo(a, within(a * 5e-5));
        assertThat(fall.radial().mm()).isCloseTo(b, within(b * 5e-5));
        assertThat(fall.square().mm()).isCloseTo(c, within(c * 5e-5));
    }

    /** Check values 11 and 13 of the grinding check sheet: derived and held against an own numeric model. */
    @Test
    void aStaticReliefOfSixTransverseLeavesTheWorkingReliefOfTheCheckValues() {
        Angle nine = Angle.ofDeg(9);
        double metric = 4.6 * Math.tan(Math.toRadians(6));
        assertThat(ChamferRelief.working(
                                Length.ofMm(metric),
                                Length.ofMm(4.6),
                                nine,
                                Bench.M10.lead().perTurn())
                        .deg())
                .isCloseTo(5.4615, within(5e-5));
        double inch = 0.23 * Math.tan(Math.toRadians(6));
        assertThat(ChamferRelief.working(
                                Length.ofInch(inch),
                                Length.ofInch(0.23),
                                nine,
                                Bench.HALF_13.lead().perTurn())
                        .deg())
                .isCloseTo(5.4496, within(5e-5));
    }

    @Test
    void workingUndoesTheFallThatWasMadeForIt() {
        Random random = new Random(11);
        for (int i = 0; i < 500; i++) {
            Length r = Length.ofMm(1 + 20 * random.nextDouble());
            Angle kappa = Angle.ofDeg(2 + 30 * random.nextDouble());
            Length lead = Length.ofMm(0.2 + 3 * random.nextDouble());
            double wanted = 1 + 10 * random.nextDouble();
            Angle loss = ChamferRelief.loss(r, kappa, lead, Pen.NONE);
            Relief relief = ChamferRelief.forWorking(Angle.ofDeg(wanted), loss, kappa, Pen.NONE);
            Fall fall = ChamferRelief.fall(relief, r, kappa, FORTY, Pen.NONE);
            assertThat(ChamferRelief.working(fall.perRadian(), r, kappa, lead).deg())
                    .isCloseTo(wanted, within(1e-9));
        }
    }

    @Test
    void anAxialCamThatOnlyFollowsTheLeadLeavesNoWorkingReliefAtAll() {
        double kappa = Math.toRadians(9);
        double perRadian = 1.5 / (2 * Math.PI) * Math.tan(kappa);
        Angle working =
                ChamferRelief.working(Length.ofMm(perRadian), Length.ofMm(4.6), Angle.ofDeg(9), Length.ofMm(1.5));
        assertThat(working.deg()).isCloseTo(0, within(1e-12));
    }

    @Test
    void theThreeFallsAreOneFallSeenThreeWays() {
        Relief relief = ChamferRelief.forWorking(Angle.ofDeg(6), Angle.ofDeg(0.4), Angle.ofDeg(14), Pen.NONE);
        Fall fall = ChamferRelief.fall(relief, Length.ofMm(4), Angle.ofDeg(14), FORTY, Pen.NONE);
        double kappa = Math.toRadians(14);
        assertThat(fall.radial().mm()).isCloseTo(fall.axial().mm() * Math.tan(kappa), within(1e-12));
        assertThat(fall.square().mm()).isCloseTo(fall.axial().mm() * Math.sin(kappa), within(1e-12));
    }

    /** 1/(1 − 1.5/44.87) = 1.0346: the loss on these spiral flutes is 3.5 % more. */
    @Test
    void spiralFlutesFeelALongerLead() {
        Flutes right = new Flutes(3, FluteKind.SPIRAL_RIGHT, FluteForm.UNKNOWN, Angle.ofDeg(35));
        Flutes left = new Flutes(3, FluteKind.SPIRAL_LEFT, FluteForm.UNKNOWN, Angle.ofDeg(35));
        assertThat(ChamferRelief.fluteLead(Bench.M10, right, Pen.NONE).mm()).isCloseTo(44.867, within(0.001));
        assertThat(ChamferRelief.leadFelt(Bench.M10, right, Pen.NONE).mm() / 1.5)
                .isCloseTo(1.0346, within(5e-5));
        assertThat(ChamferRelief.leadFelt(Bench.M10, left, Pen.NONE).mm()).isLessThan(1.5);
        assertThat(ChamferRelief.leadFelt(Bench.leftHand(Bench.M10), left, Pen.NONE)
                        .mm())
                .isCloseTo(ChamferRelief.leadFelt(Bench.M10, right, Pen.NONE).mm(), within(1e-12));
    }

    @Test
    void aReliefThatNobodyGrindsIsRefusedWithTheMend() {
        assertThatThrownBy(() -> ChamferRelief.forWorking(Angle.ofDeg(30), Angle.ofDeg(0.5), Angle.ofDeg(9), Pen.NONE))
                .isInstanceOf(OutOfRange.class)
                .hasMessage(
                        "working-relief: \"30.0 deg\" must be over 0, and at most 18.8 deg on this chamfer. To mend:"
                                + " ask for the relief left at work, square to the edge; 4 to 12 deg is common.");
    }
}
