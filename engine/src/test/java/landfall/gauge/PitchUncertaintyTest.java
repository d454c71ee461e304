// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Objects;
import java.util.Random;
import java.util.function.DoubleSupplier;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.thread.CallOut;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;
import landfall.thread.callout.CallOuts;
import landfall.working.Pen;
import landfall.working.Recorded;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The propagated uncertainty against seeded draws of the readings through the measuring equations themselves. */
@DisplayName("How well a pitch diameter is known")
class PitchUncertaintyTest {
    private static final int DRAWS = 20_000;
    /** 95 % of a normal distribution lie within this many standard deviations. */
    private static final double K95 = 1.959964;

    private static final ReadingUncertainty TOLD =
            new ReadingUncertainty(Length.ofMm(0.004), Length.ofMm(0.001), Length.ofMm(0.006), Angle.ofDeg(0.5), false);

    private static CallOut callOut(String text) {
        return CallOuts.read(text).orThrow();
    }

    private static MeasuredPitch measured(CallOut callOut, GaugeWish wish, Pen pen) {
        Gauging gauging = Gauging.on(callOut, wish, pen);
        return Objects.requireNonNull(MeasuredPitch.of(gauging, wish, TOLD, false, pen));
    }

    /** Half the width of the middle 95 % of the draws. */
    private static double spread(DoubleSupplier draw) {
        double[] all = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            all[i] = draw.getAsDouble();
        }
        Arrays.sort(all);
        return (all[(int) (0.975 * DRAWS)] - all[(int) (0.025 * DRAWS)]) / 2;
    }

    private static ScrewThread withFlank(ScrewThread thread, double offDeg) {
        Profile form = thread.profile();
        Profile off = new Profile(
                form.name(),
                Angle.ofDeg(form.includedAngle().deg() + 2 * offDeg),
                form.addendum(),
                form.depth(),
                form.crestFlat(),
                form.rootFlat());
        return new ScrewThread(thread.family(), off, thread.major(), thread.lead(), thread.hand());
    }

    /** Best and large wires; 60, 29 and 55 degrees. */
    @ParameterizedTest
    @CsvSource({
        "1/4-20 UNC,     0.733,  6.66",
        "1/4-20 UNC,     1.00,   7.46",
        "M10x1.5,        0.866,  10.33",
        "M10x1.5,        1.30,   11.63",
        "1/2-10 ACME-2G, 1.312,  13.2",
        "G 1/2,          1.023,  20.985"
    })
    void overWiresItAgreesWithDraws(String text, double wire, double over) {
        CallOut callOut = callOut(text);
        GaugeWish wish = new GaugeWish(Length.ofMm(wire), null, Length.ofMm(over), null);
        double propagated =
                measured(callOut, wish, Pen.NONE).uncertainty().expanded().mm();
        Random random = new Random(41);
        double drawn = spread(() -> ThreeWires.pitchDiameter(
                        withFlank(callOut.thread(), random.nextGaussian() * 0.5 / K95),
                        Length.ofMm(wire + random.nextGaussian() * 0.001 / K95),
                        Length.ofMm(over + random.nextGaussian() * 0.004 / K95),
                        Pen.NONE)
                .pitchDiameter()
                .mm());
        assertThat(propagated).isCloseTo(drawn, within(0.03 * drawn));
    }

    @ParameterizedTest
    @CsvSource({"3,false,true", "5,false,true", "7,false,true", "3,true,true", "3,false,false", "5,true,false"})
    void inTheVAnvilItAgreesWithDraws(int flutes, boolean plain, boolean onCrests) {
        CallOut callOut = callOut("M10x1.5");
        double V = 1 / Math.sin(Math.toRadians(90 - 180.0 / flutes));
        double k = (1 + V) / 2;
        double R = onCrests ? (9.05 + V * 10.05 + 3 * 0.9 - Math.sqrt(0.75) * 1.5) / (2 * k) : 9.05 + 2.7 - 1.299;
        double reading = plain ? k * R : R;
        Length crest = onCrests ? Length.ofMm(10.05) : null;
        GaugeWish wish = new GaugeWish(
                Length.ofMm(0.9),
                null,
                null,
                new GaugeWish.InVAnvil(flutes, new VAnvil.Reading(Length.ofMm(reading), plain), crest));
        MeasuredPitch found = measured(callOut, wish, Pen.NONE);
        assertThat(found.measured().value().mm()).isCloseTo(9.05, within(1e-3));
        Random random = new Random(17);
        double drawn = spread(() -> {
            double read = reading + random.nextGaussian() * 0.004 / K95;
            double bears = 10.05 + random.nextGaussian() * 0.006 / K95;
            return VAnvil.of(
                            withFlank(callOut.thread(), random.nextGaussian() * 0.5 / K95),
                            new GaugeWish.InVAnvil(
                                    flutes,
                                    new VAnvil.Reading(Length.ofMm(read), plain),
                                    onCrests ? Length.ofMm(bears) : null),
                            Length.ofMm(0.9 + random.nextGaussian() * 0.001 / K95),
                            Pen.NONE)
                    .pitchDiameter()
                    .mm();
        });
        double propagated = found.uncertainty().expanded().mm();
        assertThat(propagated).isCloseTo(drawn, within(0.03 * drawn));
    }

    /** M10, best wire: .004 for the reading and 3 times .001 for the wires give .005; the angle does not count. */
    @Test
    void theBestWireDoesNotFeelTheAngle() {
        GaugeWish wish = new GaugeWish(null, null, Length.ofMm(10.33), null);
        MeasuredPitch found = measured(callOut("M10x1.5"), wish, Pen.NONE);
        assertThat(found.uncertainty().expanded().mm()).isCloseTo(0.005, within(1e-5));
        assertThat(found.uncertainty().parts())
                .extracting(PitchUncertainty.Part::what)
                .containsExactly("size over the wires", "wires");
        assertThat(found.uncertainty().parts().stream()
                        .mapToDouble(PitchUncertainty.Part::percent)
                        .sum())
                .isCloseTo(100, within(1e-9));
    }

    @Test
    void printedFormulasGiveTheirFigures() {
        Recorded wires = new Recorded();
        measured(callOut("1/4-20"), new GaugeWish(Length.ofMm(1), null, Length.ofMm(7.46), null), wires);
        WorkingCheck.everyFormulaGivesItsFigure(wires.steps());
        for (Length crest : new Length[] {Length.ofMm(10.05), null}) {
            for (boolean plain : new boolean[] {true, false}) {
                Recorded anvil = new Recorded();
                var in = new GaugeWish.InVAnvil(3, new VAnvil.Reading(Length.ofMm(plain ? 15.2 : 10.14), plain), crest);
                var onWires =
                        new GaugeWish.InVAnvil(3, new VAnvil.Reading(Length.ofMm(plain ? 15.5 : 10.33), plain), null);
                measured(callOut("M10"), new GaugeWish(null, null, null, crest == null ? onWires : in), anvil);
                WorkingCheck.everyFormulaGivesItsFigure(anvil.steps());
            }
        }
    }
}
