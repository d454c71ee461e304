// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.ChamferGiven;
import landfall.tap.Cutting;
import landfall.tap.Flutes;
import landfall.tap.Land;
import landfall.tap.Tap;
import landfall.tap.ThreadRelief;
import landfall.working.Pen;
import landfall.working.Step;
import landfall.working.Worked;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A set-up read forwards")
class AsSetTest {
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

    private static AsSet of(GrindSetup setup, double swivel, double axial, double radial) {
        return AsSet.of(setup, new AsSet.Read(Angle.ofDeg(swivel), Length.ofMm(axial), Length.ofMm(radial)), Pen.NONE);
    }

    @Test
    void setRightItGivesTheReliefThatWasWanted() {
        AsSet right = AsSet.of(setup(), new AsSet.Read(null, null, null), Pen.NONE);
        assertThat(right.relief().working().deg()).isCloseTo(6, within(1e-12));
        assertThat(right.chamfer().deg()).isCloseTo(9, within(1e-12));
    }

    /** The example of docs/methods/spread.md. */
    @Test
    void theExampleOfTheNoteByHand() {
        AsSet set = of(setup(), 9.25, 0, 0.44);
        assertThat(set.perRadian().mm()).isCloseTo(0.42017, within(5e-6));
        assertThat(set.relief().ground().deg()).isCloseTo(6.5713, within(5e-5));
        assertThat(set.relief().loss().deg()).isCloseTo(0.5089, within(5e-5));
        assertThat(set.relief().working().deg()).isCloseTo(6.0623, within(5e-5));
    }

    @Test
    void theWorkingGivesItsFigures() {
        GrindSetup setup = setup();
        Worked<GrindSetup> worked =
                GrindSetup.of(setup.tap(), setup.fixture(), Bench.working(6)).orThrow();
        for (AsSet.Read read : List.of(
                new AsSet.Read(null, null, null),
                new AsSet.Read(Angle.ofDeg(9.25), Length.ofMm(0.1), Length.ofMm(0.44)))) {
            List<Step> steps = new ArrayList<>(worked.steps());
            steps.addAll(Worked.of(pen -> AsSet.of(setup, read, pen)).steps());
            WorkingCheck.everyFormulaGivesItsFigure(steps);
        }
    }

    @Test
    void manyAtOnceGiveWhatOneByOneGives() {
        Random random = new Random(4);
        GrindSetup setup = setup();
        int size = 4000;
        double[][] inputs = new double[3][size];
        for (int k = 0; k < size; k++) {
            // every hundredth beyond where the series are used
            inputs[0][k] = k % 100 == 0 ? 45 + 14 * random.nextDouble() : 1 + 43 * random.nextDouble();
            inputs[1][k] = 2 * random.nextDouble();
            inputs[2][k] = 1.2 * random.nextDouble();
        }
        double[][] few = new double[1][size];
        AsSetModel model = AsSetModel.of(
                setup,
                new AsSet.Read(null, null, null),
                List.of(AsSetModel.Dial.SWIVEL, AsSetModel.Dial.AXIAL, AsSetModel.Dial.RADIAL));
        model.answer(inputs, few, why -> {});
        for (int k = 0; k < size; k++) {
            double one = of(setup, inputs[0][k], inputs[1][k], inputs[2][k])
                    .relief()
                    .working()
                    .deg();
            assertThat(few[0][k]).as("setting %d", k).isCloseTo(one, within(1e-12));
        }
    }

    @Test
    void theSeriesGiveWhatThePlatformGives() {
        Random random = new Random(9);
        GrindSetup setup = setup();
        int size = 2000;
        double[][] inputs = new double[2][size];
        for (int k = 0; k < size; k++) {
            inputs[0][k] = 1 + 43.9 * random.nextDouble();
            inputs[1][k] = 0.8 * random.nextDouble();
        }
        double[][] found = new double[1][size];
        AsSetModel.of(
                        setup,
                        new AsSet.Read(null, Length.ZERO, null),
                        List.of(AsSetModel.Dial.SWIVEL, AsSetModel.Dial.RADIAL))
                .answer(inputs, found, why -> {});
        for (int k = 0; k < size; k++) {
            double one =
                    of(setup, inputs[0][k], 0, inputs[1][k]).relief().working().deg();
            assertThat(found[0][k]).isCloseTo(one, within(1e-12));
        }
    }

    @Test
    void theRadialRiseMattersMostWhereItMakesTheFall() {
        List<Moves> moves = Moves.of(setup(), Pen.NONE);
        assertThat(moves.get(0).with()).isEqualTo("the radial rise over the lobe");
        // 0.01 mm of 0.43456 mm is 2.30 % of tan 6.4953 deg, so 0.148 deg
        assertThat(moves.get(0).relief().deg()).isCloseTo(0.148, within(0.0005));
        assertThat(moves)
                .isSortedAccordingTo((a, b) -> Double.compare(
                        Math.abs(b.relief().deg()), Math.abs(a.relief().deg())));
    }
}
