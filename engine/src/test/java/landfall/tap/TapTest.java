// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.thread.Family;
import landfall.thread.Hand;
import landfall.thread.Lead;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Recorded;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The tap as it is measured")
class TapTest {
    private static final ScrewThread M10 =
            new ScrewThread(Family.METRIC, Profile.ISO_60, Length.ofMm(10), new Lead(Length.ofMm(1.5), 1), Hand.RIGHT);

    @Test
    void anyTwoOfAnglePointAndThreadsGiveTheThird() {
        Chamfer one = new ChamferGiven(Angle.ofDeg(9), Length.ofMm(8.2), null).resolve(M10, Pen.NONE);
        Chamfer two = new ChamferGiven(Angle.ofDeg(9), null, one.threads()).resolve(M10, Pen.NONE);
        Chamfer three = new ChamferGiven(null, Length.ofMm(8.2), one.threads()).resolve(M10, Pen.NONE);
        assertThat(two.pointDiameter().mm()).isCloseTo(8.2, within(1e-12));
        assertThat(three.angle().deg()).isCloseTo(9, within(1e-12));
    }

    /** Check value 51: 2, 4, 6, 8 threads of a depth of .6134 P a side are 17.05, 8.72, 5.84, 4.38 deg. */
    @Test
    void chamferAnglesByThreadsAreThoseOfTheCheckValues() {
        double[][] rows = {{2, 17.05}, {4, 8.72}, {6, 5.84}, {8, 4.38}};
        Length point = Length.ofMm(10 - 2 * 0.6134 * 1.5);
        for (double[] row : rows) {
            assertThat(new ChamferGiven(null, point, row[0])
                            .resolve(M10, Pen.NONE)
                            .angle()
                            .deg())
                    .isCloseTo(row[1], within(0.005));
        }
    }

    @Test
    void aThirdFigureThatPartsIsRefused() {
        assertThatThrownBy(() -> new ChamferGiven(Angle.ofDeg(9), Length.ofMm(8.2), 4.5).resolve(M10, Pen.NONE))
                .hasMessage(
                        "chamfer.threads: \"4.5\" must be 3.79, as angle and point diameter make it (within 1 %). To "
                                + "mend:"
                                + " leave one of the three out.");
    }

    @Test
    void oneFigureAloneIsTooFew() {
        assertThatThrownBy(() -> new ChamferGiven(null, Length.ofMm(8.2), null).resolve(M10, Pen.NONE))
                .hasMessage(
                        "chamfer: \"fewer than two figures\" must be two of angle, pointDiameter and threads. To mend:"
                                + " measure the chamfer's angle and the diameter at the point.");
    }

    /**
     * By hand: core 4, flute radius 2.5, so the flute's centre is at 4.5; cos(γ/2) = (25 + 20.25 − 6.25)/45 = .866667.
     */
    @Test
    void aFluteOfOneArcLeavesItsLand() {
        Flutes flutes =
                new Flutes(4, FluteKind.STRAIGHT, new FluteForm(Length.ofMm(4), Length.ofMm(2.5), null), Angle.ZERO);
        Recorded pen = new Recorded();
        Angle land = new Land.LeftByFlute().angle(M10.major(), flutes, pen);
        assertThat(land.deg()).isCloseTo(90 - 2 * Math.toDegrees(Math.acos(39 / 45.0)), within(1e-9));
        WorkingCheck.everyFormulaGivesItsFigure(pen.steps());
    }

    @Test
    void aLandWiderThanItsDivisionIsRefused() {
        assertThatThrownBy(() -> new Land.Arc(Length.ofMm(9)).angle(M10.major(), Flutes.straight(4), Pen.NONE))
                .hasMessage(
                        "land.width: \"9.0 mm\" must be such that a land and a flute fit in 360/4 = 90.0 deg. To mend:"
                                + " measure one land from its cutting edge to its heel.");
    }

    @Test
    void wearInWordsGrowsWithTheState() {
        double fresh = Wear.FRESH.land(M10, Pen.NONE).mm();
        double due = Wear.DUE.land(M10, Pen.NONE).mm();
        double spent = Wear.SPENT.land(M10, Pen.NONE).mm();
        assertThat(new double[] {fresh, due}).containsExactly(0, 0.2);
        assertThat(spent).isCloseTo(0.3, within(1e-12));
    }
}
