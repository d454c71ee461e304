// SPDX-License-Identifier: Apache-2.0
package landfall.chip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.FluteKind;
import landfall.tap.Least;
import landfall.tap.Make;
import landfall.tap.PitchZone;
import landfall.tap.Tap;
import landfall.tap.TapMaterial;
import landfall.thread.Hand;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Recorded;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

@DisplayName("Chips of a tap")
class ChipLoadTest {
    private static final Length HOLE = Length.ofMm(8.5);
    private static final GeometryFactory PLANE = new GeometryFactory();

    @ParameterizedTest(name = "tooth {0}")
    @CsvFileSource(resources = "/reference/chip/slices.csv", delimiter = ';')
    void slicesAreThoseOfTheClippingProgram(int tooth, double area) {
        ChipLoad load = load(Taps.m10(4, 4), HOLE);
        assertThat(load.slices()).hasSize(17);
        assertThat(load.slices().get(tooth - 1).area().mm2()).isCloseTo(area, within(0.00005));
    }

    @ParameterizedTest(name = "{0} threads")
    @CsvFileSource(resources = "/reference/chip/thickness.csv", delimiter = ';')
    void thicknessStepAndTeethAreThoseOfTheTable(double threads, double h, double step, int teeth, double largest) {
        ChipLoad load = load(Taps.m10(4, threads), HOLE);
        assertThat(load.steps().thickness().mm()).isCloseTo(h, within(0.00005));
        assertThat(load.steps().radial().mm()).isCloseTo(step, within(0.00005));
        assertThat(load.slices()).hasSize(teeth);
        assertThat(load.slices().stream().mapToDouble(s -> s.area().mm2()).max().orElseThrow())
                .isCloseTo(largest, within(0.00005));
    }

    /** By hand: t .75, crest 1.5/8; .75*.1875 + .5625*.57735 = .140625 + .324760. */
    @Test
    void theGrooveOfM10InAHoleOf8Point5ByHand() {
        Groove groove = load(Taps.m10(4, 4), HOLE).groove();
        assertThat(groove.area().mm2()).isCloseTo(0.465385, within(5e-7));
        assertThat(groove.depth().mm()).isCloseTo(0.75, within(1e-12));
        assertThat(groove.holeWidth().mm()).isCloseTo(0.1875 + 1.5 * Math.tan(Math.PI / 6), within(1e-12));
    }

    private static double enclosed(Slice slice) {
        double twice = 0;
        for (int i = 0; i < slice.outline().size(); i++) {
            Slice.Corner a = slice.outline().get(i);
            Slice.Corner b = slice.outline().get((i + 1) % slice.outline().size());
            twice += a.along().mm() * b.radius().mm()
                    - b.along().mm() * a.radius().mm();
        }
        return Math.abs(twice) / 2;
    }

    @Test
    void slicesAddUpToTheGrooveAndItsMomentWhateverTheTap() {
        Random random = new Random(5);
        for (int i = 0; i < 300; i++) {
            double pitch = 0.4 + 2 * random.nextDouble();
            ScrewThread thread = Taps.metric(4 * pitch + 20 * random.nextDouble(), pitch, 1 + random.nextInt(3));
            Length hole = thread.major().minus(Length.ofMm(pitch * (0.3 + 0.7 * random.nextDouble())));
            Tap tap = Taps.tap(
                    thread, 2 + random.nextInt(5), 1.5 + 8 * random.nextDouble(), PitchZone.UNKNOWN, Make.PLAIN_HSS);
            ChipLoad load = load(tap, hole);
            double area = 0;
            double moment = 0;
            for (Slice slice : load.slices()) {
                assertThat(slice.area().mm2()).isPositive();
                assertThat(enclosed(slice)).isCloseTo(slice.area().mm2(), within(1e-12));
                area += slice.area().mm2();
                moment += slice.area().mm2() * slice.radius().mm();
            }
            assertThat(area).isCloseTo(load.groove().area().mm2(), within(1e-12));
            assertThat(moment).isCloseTo(area * load.groove().radius().mm(), within(1e-10));
            assertThat(load.totalArea().mm2()).isCloseTo(thread.lead().starts() * area, within(1e-11));
        }
    }

    /** The same slices by the overlay of a geometry library: strip of two chamfer lines cut with the groove. */
    @Test
    void slicesAreThoseOfAGeometryLibrary() {
        ChipLoad load = load(Taps.m10(3, 2.7), HOLE);
        double slope = Math.tan(load.steps().chamfer().rad());
        double wide = load.groove().holeWidth().mm() / 2;
        double narrow = load.groove().crestWidth().mm() / 2;
        Geometry groove = polygon(-wide, 4.25, wide, 4.25, narrow, 5, -narrow, 5);
        double touch = 4.25 - wide * slope;
        for (Slice slice : load.slices()) {
            double from = touch + (slice.tooth() - 1) * load.steps().radial().mm();
            double to = from + load.steps().radial().mm();
            Geometry strip = polygon(-9, from - 9 * slope, 9, from + 9 * slope, 9, to + 9 * slope, -9, to - 9 * slope);
            Geometry cut = groove.intersection(strip);
            assertThat(slice.area().mm2()).isCloseTo(cut.getArea(), within(1e-12));
            assertThat(slice.radius().mm()).isCloseTo(cut.getCentroid().getY(), within(1e-9));
        }
    }

    @Test
    void aTapOverTheBasicPitchDiameterCutsMoreByItsWiderCrest() {
        Limits limit = Limits.ofMm(9.026 + 0.040, 9.026 + 0.072);
        Tap wide = Taps.tap(Taps.metric(10, 1.5, 1), 4, 4, new PitchZone(limit, Least.UNKNOWN), Make.PLAIN_HSS);
        double basic = load(Taps.m10(4, 4), HOLE).totalArea().mm2();
        double more = load(wide, HOLE).totalArea().mm2() - basic;
        // correction of the basic groove: depth .75 times .056 times tan 30
        assertThat(more).isCloseTo(0.024, within(0.0005));
    }

    @Test
    void everySecondToothGoneDoublesTheChip() {
        Make interrupted = new Make(TapMaterial.HSS, null, true);
        Tap tap = Taps.tap(Taps.metric(10, 1.5, 1), 3, 4, PitchZone.UNKNOWN, interrupted);
        assertThat(load(tap, HOLE).steps().thickness().mm())
                .isCloseTo(2 * load(Taps.m10(3, 4), HOLE).steps().thickness().mm(), within(1e-12));
    }

    /** Shares of M10, 3 flutes, 9 degrees, run-out .03: .428, .239, .333 in cutting order, derived by brute force. */
    @Test
    void runOutSharesTheCutUnevenly() {
        double threads = 0.541266 / Math.tan(Math.toRadians(9));
        ChipLoad load = ChipLoad.of(Taps.m10(3, threads), HOLE, Evenness.of(Length.ofMm(0.03)), Pen.NONE);
        assertThat(load.shares()).extracting(FluteShare::flute).containsExactly(1, 2, 3);
        double[] percent =
                load.shares().stream().mapToDouble(FluteShare::percent).toArray();
        assertThat(percent[0]).isCloseTo(42.8, within(0.06));
        assertThat(percent[1]).isCloseTo(23.9, within(0.06));
        assertThat(percent[2]).isCloseTo(33.3, within(0.06));
    }

    /**
     * Idle from a total run-out of .0914 on that tap when it lies worst (eccentricity .0457, brute force); with one
     * edge at its highest the next is lower by 1.5 times the eccentricity, idle from 2*.0792/1.5 = .1056.
     */
    @Test
    void aToothCutsNothingFromTheRunOutThatIsNamed() {
        double threads = 0.541266 / Math.tan(Math.toRadians(9));
        Recorded pen = new Recorded();
        ChipLoad load = ChipLoad.of(Taps.m10(3, threads), HOLE, Evenness.of(Length.ofMm(0.106)), pen);
        assertThat(load.shares()).anyMatch(FluteShare::isIdle);
        assertThat(pen.steps().stream()
                        .filter(s -> s.symbol().equals("TIR_0"))
                        .findFirst()
                        .orElseThrow()
                        .value())
                .isCloseTo(0.0914, within(0.0001));
        assertThat(ChipLoad.of(Taps.m10(3, threads), HOLE, Evenness.of(Length.ofMm(0.105)), Pen.NONE)
                        .shares())
                .noneMatch(FluteShare::isIdle);
    }

    /**
     * M10, 3 flutes, 9 degrees: a_r = .5*tan 9 = .07919. Land 1 proud by .03, land 3 low by .02: land 1 cuts .07919 +
     * .03 + .02, land 2 .07919 - .03, land 3 .07919 - .02, each over .23758.
     */
    @Test
    void heightsOfLandsShareTheCutLandByLand() {
        double threads = 0.541266 / Math.tan(Math.toRadians(9));
        Evenness heights = new Evenness(Length.ZERO, List.of(Length.ofMm(0.03), Length.ZERO, Length.ofMm(-0.02)));
        Recorded pen = new Recorded();
        ChipLoad load = ChipLoad.of(Taps.m10(3, threads), HOLE, heights, pen);
        WorkingCheck.everyFormulaGivesItsFigure(pen.steps());
        double step = 0.5 * Math.tan(Math.toRadians(9));
        assertThat(load.shares())
                .extracting(FluteShare::percent)
                .satisfiesExactly(
                        one -> assertThat(one).isCloseTo(100 * (step + 0.05) / 3 / step, within(1e-3)),
                        two -> assertThat(two).isCloseTo(100 * (step - 0.03) / 3 / step, within(1e-3)),
                        three -> assertThat(three).isCloseTo(100 * (step - 0.02) / 3 / step, within(1e-3)));
        assertThat(load.thickest().mm()).isCloseTo(load.steps().thickness().mm() * (step + 0.05) / step, within(1e-6));
    }

    /** What all lands take together does not change, however far one stands proud; who takes nothing is named. */
    @Test
    void sharesSumToTheWholeAndALowLandIdles() {
        Random random = new Random(510);
        for (int i = 0; i < 200; i++) {
            int flutes = 2 + random.nextInt(5);
            List<Length> heights =
                    random.doubles(flutes, -0.2, 0.2).mapToObj(Length::ofMm).toList();
            ChipLoad load = ChipLoad.of(Taps.m10(flutes, 4), HOLE, new Evenness(Length.ZERO, heights), Pen.NONE);
            double sum = load.shares().stream().mapToDouble(FluteShare::percent).sum();
            assertThat(sum).as(heights.toString()).isCloseTo(100, within(1e-9));
        }
        Evenness low = new Evenness(Length.ZERO, List.of(Length.ZERO, Length.ZERO, Length.ofMm(-0.2)));
        assertThat(ChipLoad.of(Taps.m10(3, 4), HOLE, low, Pen.NONE).shares())
                .filteredOn(FluteShare::isIdle)
                .extracting(FluteShare::flute)
                .containsExactly(3);
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        Recorded pen = new Recorded();
        ChipLoad.of(Taps.m10(3, 4), HOLE, Evenness.of(Length.ofMm(0.02)), pen);
        WorkingCheck.everyFormulaGivesItsFigure(pen.steps());
    }

    @Test
    void aHoleAsWideAsTheThreadIsRefused() {
        assertThatThrownBy(() -> load(Taps.m10(4, 4), Length.ofMm(10)))
                .hasMessage("hole: \"10.000 mm (0.3937 in)\" must be over 7.727 mm (0.3042 in) and under the major"
                        + " diameter, 10.000 mm (0.3937 in). To mend: measure the hole, or look at the drill and the"
                        + " call-out again.");
    }

    @Test
    void chipsGoWhereHandAndFlutesSendThem() {
        assertThat(ChipFlow.of(FluteKind.SPIRAL_RIGHT, Hand.RIGHT)).isEqualTo(ChipFlow.BACK);
        assertThat(ChipFlow.of(FluteKind.SPIRAL_RIGHT, Hand.LEFT)).isEqualTo(ChipFlow.FORWARD);
        assertThat(ChipFlow.of(FluteKind.SPIRAL_LEFT, Hand.RIGHT)).isEqualTo(ChipFlow.FORWARD);
        assertThat(ChipFlow.of(FluteKind.SPIRAL_LEFT, Hand.LEFT)).isEqualTo(ChipFlow.BACK);
        assertThat(ChipFlow.of(FluteKind.SPIRAL_POINT, Hand.LEFT)).isEqualTo(ChipFlow.FORWARD);
        assertThat(ChipFlow.of(FluteKind.STRAIGHT, Hand.RIGHT)).isEqualTo(ChipFlow.STAYS);
    }

    private static ChipLoad load(Tap tap, Length hole) {
        return ChipLoad.of(tap, hole, Evenness.ALIKE, Pen.NONE);
    }

    private static Geometry polygon(double... zr) {
        Coordinate[] corners = new Coordinate[zr.length / 2 + 1];
        for (int i = 0; i < zr.length / 2; i++) {
            corners[i] = new Coordinate(zr[2 * i], zr[2 * i + 1]);
        }
        corners[zr.length / 2] = corners[0];
        return PLANE.createPolygon(corners);
    }
}
