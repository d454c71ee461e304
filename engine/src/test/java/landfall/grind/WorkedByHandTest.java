// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.ChamferGiven;
import landfall.tap.Cutting;
import landfall.tap.Flutes;
import landfall.tap.Land;
import landfall.tap.Tap;
import landfall.tap.ThreadRelief;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The figures that the method notes on grinding work out by hand, for one M8 x 1.25 tap. */
@DisplayName("The examples of the method notes")
class WorkedByHandTest {
    private static final double LAND = 0.65;

    private static GrindSetup setup() {
        Tap bare = Bench.tap(
                Bench.metric(8, 1.25),
                Flutes.straight(3),
                Angle.ofDeg(40),
                new ChamferGiven(Angle.ofDeg(9), Length.ofMm(6.4), null));
        var cutting = new Cutting(
                bare.flutes(), new Land.Arc(Length.ofMm(2.6)), bare.cutting().chamfer(), ThreadRelief.NONE);
        Tap tap = new Tap(bare.callOut(), cutting, bare.body(), bare.pitch(), bare.make());
        return Bench.setup(tap, Bench.fixture(Bench.cam(3, 60, 30)), Bench.working(6));
    }

    @Test
    void chamferRelief() {
        ChamferShape shape = setup().shape();
        assertThat(shape.land().rad()).isCloseTo(LAND, within(1e-12));
        assertThat(shape.midRadius().mm()).isCloseTo(3.6, within(1e-12));
        assertThat(shape.relief().loss().deg()).isCloseTo(0.4953, within(5e-5));
        assertThat(shape.relief().ground().deg()).isCloseTo(6.4953, within(5e-5));
        assertThat(shape.relief().transverse().deg()).isCloseTo(6.5756, within(5e-5));
        assertThat(shape.fall().perRadian().mm()).isCloseTo(0.41498, within(5e-6));
        assertThat(shape.fall().radial().mm()).isCloseTo(0.26974, within(5e-6));
        assertThat(shape.fall().axial().mm()).isCloseTo(1.7030, within(5e-5));
        assertThat(shape.fall().square().mm()).isCloseTo(0.26642, within(5e-6));
    }

    @Test
    void camAndGap() {
        GrindSetup.Motion motion = setup().motion();
        assertThat(motion.setting().rises().radial().mm()).isCloseTo(0.43456, within(5e-6));
        assertThat(motion.setting().rises().radialOverLand().mm()).isCloseTo(0.26974, within(5e-6));
        assertThat(motion.setting().ways().get(1).rises().axial().mm()).isCloseTo(2.7437, within(5e-5));
        assertThat(motion.phase().delta().deg()).isCloseTo(6.271, within(5e-4));
        assertThat(motion.gap().needed().deg()).isCloseTo(38.122, within(5e-4));
        assertThat(motion.gap().have().deg()).isCloseTo(60, within(1e-12));
        assertThat(motion.gap().clear()).isTrue();
        assertThat(motion.clearance().leastWidth().mm()).isCloseTo(5.114, within(5e-4));
        assertThat(motion.clearance().overPoint().mm()).isCloseTo(10.102, within(5e-4));
    }

    @Test
    void dialTargets() {
        double heel = Math.toDegrees(LAND);
        var readings = setup().motion().dial().stream()
                .filter(target -> Math.abs(target.land().deg() - heel) < 1e-9)
                .map(target -> target.reading().mm())
                .toList();
        double[] byHand = {0, 0.26974, -0.12931, 0.26974, -0.26642, 0};
        assertThat(readings).hasSize(byHand.length);
        for (int i = 0; i < byHand.length; i++) {
            assertThat(readings.get(i)).isCloseTo(byHand[i], within(6e-6));
        }
    }

    @Test
    void regrindStock() {
        GrindSetup.Work work = setup().work();
        assertThat(work.stock().square().mm()).isCloseTo(0.02104, within(5e-6));
        assertThat(work.stock().axial().mm()).isCloseTo(0.1345, within(5e-5));
        assertThat(work.stock().radial().mm()).isCloseTo(0.0213, within(5e-6));
        assertThat(work.stock().after().pointDiameter().mm()).isCloseTo(6.3416, within(5e-5));
        assertThat(work.passes()).hasSize(3);
        assertThat(work.passes().get(0).count()).isEqualTo(1);
        assertThat(work.passes().get(0).infeed().mm()).isCloseTo(0.01686, within(5e-6));
        assertThat(work.passes().get(1).infeed().mm()).isCloseTo(0.006, within(1e-12));
    }
}
