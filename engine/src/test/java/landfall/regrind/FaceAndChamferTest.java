// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import landfall.quantity.Angle;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.tap.ThreadRelief;
import landfall.working.Pen;
import landfall.working.Recorded;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Grinding a face, and a plug into a bottoming tap")
class FaceAndChamferTest {
    /**
     * R 5, 12 deg: 1.03956 mm. R 5, 10 deg, straight feed .1 mm: 11.166 deg and 1.166 deg of land (own numeric model).
     */
    @Test
    void hasTheReferenceOffsetAndStraightFeed() {
        assertThat(FaceGrind.of(Drawer.withRake(12), Angle.ofDeg(2), Pen.NONE)
                        .offset()
                        .mm())
                .isEqualTo(1.03956, within(5e-6));
        FaceGrind face = FaceGrind.of(Drawer.withRake(10), Angle.ofDeg(1.166), Pen.NONE);
        assertThat(face.straight().feed().mm()).isEqualTo(0.1, within(5e-5));
        assertThat(face.straight().rake().deg()).isEqualTo(11.166, within(5e-4));
        assertThat(face.landLeft().deg()).isEqualTo(43.834, within(1e-9));
        assertThat(face.index().deg()).isEqualTo(90);
    }

    @Test
    void aStraightFeedRaisesTheRakeByTheLandThatItTakes() {
        for (double rake = -5; rake <= 20; rake += 2.5) {
            for (double take = 0.5; take < 8; take += 1.5) {
                FaceGrind face = FaceGrind.of(Drawer.withRake(rake), Angle.ofDeg(take), Pen.NONE);
                assertThat(face.straight().rake().deg()).isEqualTo(rake + take, within(1e-9));
            }
        }
    }

    @Test
    void moreThanTheLandIsRefusedWithTheMend() {
        Tap tap = Drawer.withRake(10);
        assertThatThrownBy(() -> FaceGrind.of(tap, Angle.ofDeg(45), Pen.NONE))
                .hasMessage("angle to take off the face: \"45.00 deg\" must be over 0 and under the land, 45.00"
                        + " deg. To mend:"
                        + " take what the wear land asks for.");
    }

    @Test
    void facesOfSpiralFlutesAreRefused() {
        Tap spiral = Drawer.m10(FluteKind.SPIRAL_RIGHT, ThreadRelief.NONE);
        assertThatThrownBy(() -> FaceGrind.of(spiral, Angle.ofDeg(2), Pen.NONE))
                .hasMessageContaining(
                        "must be straight, to grind faces on a straight slide. To mend: grind the chamfer.");
    }

    @Test
    void aBottomingChamferKeepsLargeEndAndPointAndThickensTheChip() {
        Tap plug = Drawer.m10();
        NewChamfer bottoming = NewChamfer.of(plug, 1.5, Pen.NONE);
        double length = plug.chamfer().threads() * 1.5;
        assertThat(Math.tan(bottoming.angle().rad()) * (length - bottoming.cut().mm()))
                .isEqualTo(0.8, within(1e-9));
        assertThat(bottoming.chipRatio())
                .isEqualTo(Math.sin(bottoming.angle().rad()) / Math.sin(Math.toRadians(9)), within(1e-12))
                .isGreaterThan(2);
    }

    @Test
    void aLongerChamferIsRefused() {
        Tap plug = Drawer.m10();
        assertThatThrownBy(() -> NewChamfer.of(plug, 5, Pen.NONE))
                .hasMessageContaining("must be from 1 to under the 3.37 it has. To mend: 1 to 2 make a bottoming tap;");
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        Recorded face = new Recorded();
        FaceGrind.of(Drawer.withRake(10), Angle.ofDeg(2.3), face);
        WorkingCheck.everyFormulaGivesItsFigure(face.steps());
        Recorded chamfer = new Recorded();
        NewChamfer.of(Drawer.m10(), 2, chamfer);
        WorkingCheck.everyFormulaGivesItsFigure(chamfer.steps());
    }
}
