// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import landfall.chip.ChipBreak;
import landfall.chip.ChipFlow;
import landfall.chip.Evenness;
import landfall.cut.CutWish.Grip;
import landfall.cut.CutWish.Holding;
import landfall.cut.CutWish.How;
import landfall.cut.CutWish.Opening;
import landfall.cut.Driven.Drive;
import landfall.cut.Strength.Part;
import landfall.fault.Finding;
import landfall.material.CuttingFluid;
import landfall.material.Materials;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.tap.Body;
import landfall.tap.FluteKind;
import landfall.tap.Make;
import landfall.tap.Tap;
import landfall.tap.TapMaterial;
import landfall.tap.Wear;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The cut of one tap in one hole")
class CutForecastTest {
    /**
     * By hand: M8x1.25, hole 6.8, 3 flutes, 9 deg: h .41667*sin 9 = .065181; t .6, crest .15625, area .09375 +
     * .36*.57735 = .301596; r_c = 4 - (.15625*.18 + 2*.57735*.072)/.301596 = 3.631102... C45: 1500/.065181^.22 = 2735.3
     * N/mm2, rake as usual; sharp torque 2735.3*.301596*3.6311/1000 = 2.9955; times 1.05 = 3.1453 N m.
     */
    @Test
    void torqueOfM8InMediumCarbonSteelByHand() {
        CutForecast cut = Bench.cut(Bench.m8(), Bench.wish("C45", 6.8, 8));
        assertThat(cut.load().torque().specific().nPerMm2()).isCloseTo(2735.3, within(0.5));
        assertThat(cut.load().torque().full().expected()).isCloseTo(3.1453, within(0.002));
        assertThat(cut.load().torque().full().high()).isCloseTo(3.1453 * 1.4, within(0.003));
    }

    /** Work of one turn against the volume it removes: 2 pi T = k_c times 2 pi r_c A, before the factors are put on. */
    @ParameterizedTest
    @ValueSource(strings = {"C45", "304", "6061-T6", "EN-GJL-250"})
    void workOfATurnIsPressureTimesTheVolumeItRemoves(String material) {
        CutForecast cut = Bench.cut(Bench.m8(), Bench.wish(material, 6.8, 6));
        double factors = Double.parseDouble(
                CutTable.CALIBRATION.need(cut.wish().material().group().code()).get(0));
        double turn = 2 * Math.PI * cut.load().torque().full().expected() / factors;
        double volume = cut.chips().room().perDepth().mm2() * 1.25;
        assertThat(turn).isCloseTo(cut.load().torque().specific().nPerMm2() * volume / 1000, withinPercentage(1e-9));
    }

    @Test
    void everyPrintedFormulaGivesItsFigureForEveryMaterialAndKind() {
        How told = new How(
                CuttingFluid.LIGHT_OIL,
                Opening.BLIND,
                Driven.by(Drive.HAND),
                new Holding(Grip.SQUARE, Length.ofMm(6.2)),
                Evenness.of(Length.ofMm(0.01)));
        for (WorkMaterial material : Materials.all()) {
            for (FluteKind kind : List.of(FluteKind.STRAIGHT, FluteKind.SPIRAL_RIGHT, FluteKind.SPIRAL_POINT)) {
                Tap tap = Bench.m8(kind, "M8x1.25-6H", Make.PLAIN_HSS);
                CutWish wish = new CutWish(material, Length.ofMm(6.8), Length.ofMm(14), Wear.SPENT, told);
                WorkingCheck.everyFormulaGivesItsFigure(
                        CutForecast.of(tap, wish).orThrow().steps());
            }
        }
    }

    @Test
    void everyPrintedFormulaGivesItsFigureForOneArcAndManyStarts() {
        CutWish wish = Bench.wish("C45", 14.4, 20, Wear.of(Length.ofMm(0.1)), How.USUAL);
        WorkingCheck.everyFormulaGivesItsFigure(CutForecast.of(Bench.oneArc("M16xPh3P1.5-6H", 4, 0.5, 0.35, 4), wish)
                .orThrow()
                .steps());
    }

    @Test
    void twoStartsCutTwiceTheAreaWithTwiceTheThickness() {
        CutForecast one = Bench.cut(Bench.oneArc("M16x1.5-6H", 4, 0.5, 0.35, 4), Bench.wish("C45", 14.4, 10));
        CutForecast two = Bench.cut(Bench.oneArc("M16xPh3P1.5-6H", 4, 0.5, 0.35, 4), Bench.wish("C45", 14.4, 10));
        double area = two.chips().load().totalArea().mm2()
                / one.chips().load().totalArea().mm2();
        assertThat(area).isCloseTo(2, within(1e-12));
        assertThat(two.chips().load().steps().thickness().mm())
                .isCloseTo(2 * one.chips().load().steps().thickness().mm(), within(1e-12));
        assertThat(two.load().torque().full().expected())
                .isCloseTo(one.load().torque().full().expected() * Math.pow(2, 1 - 0.22), withinPercentage(1e-9));
    }

    @Test
    void torqueGrowsWithWearDepthOfThreadAndHardness() {
        double before = 0;
        for (Wear wear : List.of(Wear.FRESH, Wear.of(Length.ofMm(0.1)), Wear.DUE, Wear.SPENT)) {
            double torque = torque(Bench.wish("C45", 6.8, 8, wear, How.USUAL));
            assertThat(torque).isGreaterThan(before);
            before = torque;
        }
        assertThat(torque(Bench.wish("C45", 6.7, 8))).isGreaterThan(torque(Bench.wish("C45", 6.8, 8)));
        assertThat(torque(Bench.wish("C45", 6.8, 20))).isGreaterThan(torque(Bench.wish("C45", 6.8, 8)));
        assertThat(torque(Bench.wish("4340 40 HRC", 6.8, 8))).isGreaterThan(torque(Bench.wish("C45", 6.8, 8)));
    }

    @Test
    void wearStatesHaveTheFactorsOfTheNote() {
        double fresh = torque(Bench.wish("C45", 6.8, 8));
        assertThat(torque(Bench.wish("C45", 6.8, 8, Wear.DUE, How.USUAL))).isCloseTo(1.5 * fresh, within(1e-9));
        assertThat(torque(Bench.wish("C45", 6.8, 8, Wear.SPENT, How.USUAL))).isCloseTo(2.5 * fresh, within(1e-9));
    }

    @Test
    void entryRisesToTheFullTorque() {
        TorqueForecast torque =
                Bench.cut(Bench.m8(), Bench.wish("C45", 6.8, 8)).load().torque();
        double before = 0;
        for (EntryTorque turn : torque.entry()) {
            assertThat(turn.torque().expected()).isGreaterThan(before);
            before = turn.torque().expected();
        }
        assertThat(before).isCloseTo(torque.full().expected(), within(1e-9));
    }

    /**
     * Half of the cut is in at 2.4 mm, 94 % at 5.25 mm on M10 with 4 threads: concave, the early teeth are the wide
     * ones.
     */
    @Test
    void halfTheTorqueComesInTheFirstThirdOfTheChamfer() {
        CutForecast cut = Bench.cut(Bench.oneArc("M10x1.5-6H", 4, 0.5, 0.35, 4), Bench.wish("C45", 8.5, 10));
        List<EntryTorque> entry = cut.load().torque().entry();
        double full = cut.load().torque().full().expected();
        assertThat(entry.get(0).torque().expected() / full).isBetween(0.2, 0.35);
        assertThat(entry.get(1).torque().expected() / full).isBetween(0.5, 0.65);
    }

    /** M8 to 16 mm: 5.0 mm of chamfer, then level to one diameter, up to the full torque, and the way back. */
    @Test
    void theCurveRunsThroughEntryDepthAndReversal() {
        CutForecast cut = Bench.cut(Bench.m8(), Bench.wish("C45", 6.8, 16));
        TorqueForecast torque = cut.load().torque();
        List<CurvePoint> curve = torque.curve();
        assertThat(curve)
                .extracting(point -> point.phase().code())
                .containsExactly("entering", "entering", "entering", "entering", "cutting", "cutting", "reversing");
        assertThat(curve.get(4).way().mm()).isCloseTo(5 + 8, within(1e-9));
        assertThat(curve.get(5).way().mm()).isCloseTo(5 + 16, within(1e-9));
        assertThat(curve.get(4).torque().expected()).isCloseTo(torque.full().expected() / 1.1, within(1e-9));
        assertThat(curve.get(5).torque()).isEqualTo(torque.full());
        assertThat(curve.get(6).torque()).isEqualTo(torque.reversal());
    }

    /** Through: teeth leave in the order in which they entered, so the torque falls to nothing. */
    @Test
    void throughAHoleTheTorqueFallsAsTheChamferLeaves() {
        How through = new How(null, Opening.THROUGH, Driven.UNTOLD, How.USUAL.holding(), Evenness.ALIKE);
        CutWish wish = Bench.wish("C45", 6.8, 6, Wear.FRESH, through);
        List<CurvePoint> leaving = Bench.cut(Bench.m8(), wish).load().torque().curve().stream()
                .filter(point -> point.phase() == CurvePoint.Phase.LEAVING)
                .toList();
        assertThat(leaving).hasSize(4);
        double before = Double.MAX_VALUE;
        for (CurvePoint point : leaving) {
            assertThat(point.torque().expected()).isLessThan(before);
            before = point.torque().expected();
        }
        assertThat(before).isCloseTo(0, within(1e-9));
        WorkingCheck.everyFormulaGivesItsFigure(
                CutForecast.of(Bench.m8(), wish).orThrow().steps());
    }

    /** Work done entering, turn by turn, is that of all teeth less what is still outside: the sum of the slices. */
    @Test
    void theWorkOfEntryIsThatOfTheSlicesInTheCut() {
        CutForecast cut = Bench.cut(Bench.m8(), Bench.wish("C45", 6.8, 6));
        double moment = 0;
        var slices = cut.chips().load().slices();
        for (EntryTorque turn : cut.load().torque().entry()) {
            int in = Math.min(slices.size(), 3 * turn.turn());
            moment = slices.subList(0, in).stream()
                    .mapToDouble(slice -> slice.area().mm2() * slice.radius().mm())
                    .sum();
            double energy =
                    2 * Math.PI * moment * cut.load().torque().specific().nPerMm2() / 1000 * 1.05;
            assertThat(2 * Math.PI * turn.torque().expected()).isCloseTo(energy, withinPercentage(1e-9));
        }
    }

    @Test
    void marginSetsTheUpperTorqueAgainstTheLowerStrength() {
        CutForecast.Load load = Bench.cut(Bench.m8(), Bench.wish("C45", 6.8, 8)).load();
        assertThat(load.margin().low())
                .isEqualTo(
                        load.strength().breaking().low() / load.torque().full().high());
        assertThat(load.margin().expected())
                .isEqualTo(load.strength().breaking().expected()
                        / load.torque().full().expected());
        assertThat(load.margin().high())
                .isEqualTo(
                        load.strength().breaking().high() / load.torque().full().low());
    }

    /** A square of 7 on a shank of 9: .208*343 = 71.3 mm3, at 850 N/mm2 60.6 N m; the round shank 143 mm3, 122 N m. */
    @Test
    void theSquareIsWeakerThanItsRoundShankAndACollectLeavesItOut() {
        Tap m12 = Bench.oneArc("M12x1.75-6H", 4, 0.5, 0.35, 4);
        Tap tap = new Tap(
                m12.callOut(), m12.cutting(), new Body(null, null, Length.ofMm(9), null), m12.pitch(), m12.make());
        How square = new How(null, null, Driven.UNTOLD, new Holding(Grip.SQUARE, Length.ofMm(7)), Evenness.ALIKE);
        Strength strength = Bench.cut(tap, Bench.wish("C45", 10.2, 12, Wear.FRESH, square))
                .load()
                .strength();
        assertThat(strength.members())
                .extracting(Strength.Member::part)
                .containsExactly(Part.THREAD, Part.SHANK, Part.SQUARE);
        assertThat(strength.members().get(2).torque().low()).isCloseTo(60.6, within(0.1));
        assertThat(strength.members().get(1).torque().low()).isCloseTo(121.7, within(0.1));
        How collet = new How(null, null, Driven.UNTOLD, new Holding(Grip.COLLET, null), Evenness.ALIKE);
        assertThat(Bench.cut(tap, Bench.wish("C45", 10.2, 12, Wear.FRESH, collet))
                        .load()
                        .strength()
                        .members())
                .extracting(Strength.Member::part)
                .containsExactly(Part.THREAD, Part.SHANK);
    }

    /** A neck of 6 on M8: pi*216/16 = 42.41 mm3, at 850 N/mm2 36.05 N m. */
    @Test
    void aMeasuredNeckIsAMemberOfItsOwn() {
        Tap m8 = Bench.m8();
        Body necked = new Body(Length.ofMm(22), Length.ofMm(72), Length.ofMm(8), Length.ofMm(6), null);
        Tap tap = new Tap(m8.callOut(), m8.cutting(), necked, m8.pitch(), m8.make());
        CutForecast cut = Bench.cut(tap, Bench.wish("C45", 6.8, 12));
        assertThat(cut.load().strength().members())
                .extracting(Strength.Member::part)
                .containsExactly(Part.THREAD, Part.NECK, Part.SHANK, Part.SQUARE);
        assertThat(cut.load().strength().members().get(1).torque().low()).isCloseTo(36.05, within(0.01));
        assertThat(codes(cut)).doesNotContain("neckNotTold");
        assertThat(codes(Bench.cut(m8, Bench.wish("C45", 6.8, 12)))).contains("neckNotTold");
    }

    /** M16 of DIN 376: shank 12, square 9 (read); .208*729 = 151.6 mm3: at 1100 N/mm2 166.8 N m, under the thread. */
    @Test
    void aShankThatIsNotToldIsThatOfAListedBlank() {
        How mill = new How(null, null, Driven.by(Drive.MILL), How.USUAL.holding(), Evenness.ALIKE);
        CutForecast cut =
                Bench.cut(Bench.oneArc("M16x2-6H", 4, 0.5, 0.35, 4), Bench.wish("C45", 14, 16, Wear.FRESH, mill));
        assertThat(cut.load().strength().list()).isEqualTo("DIN 376");
        assertThat(cut.load().strength().governing().part()).isEqualTo(Part.SQUARE);
        assertThat(cut.load().strength().governing().torque().expected()).isCloseTo(166.8, within(0.1));
        assertThat(codes(cut)).contains("shankListed");
        assertThat(codes(Bench.cut(Bench.oneArc("G 1/2", 4, 0.5, 0.35, 4), Bench.wish("C45", 19, 10))))
                .contains("shankNotTold");
    }

    @Test
    void whatTheMaterialAndTheWorkAskForIsSaid() {
        assertThat(codes(Bench.cut(Bench.m8(), Bench.wish("AZ91", 6.8, 8)))).contains("magnesium", "noTorquePoint");
        How blind = new How(null, Opening.BLIND, Driven.by(Drive.HAND), How.USUAL.holding(), Evenness.ALIKE);
        Tap spiralPoint = Bench.m8(FluteKind.SPIRAL_POINT, "M8x1.25-6H", Make.PLAIN_HSS);
        assertThat(codes(Bench.cut(spiralPoint, Bench.wish("C45", 6.8, 8, Wear.FRESH, blind))))
                .contains("chipsAhead", "byHand")
                .doesNotContain("clearChips");
        Tap carbon = Bench.m8(FluteKind.STRAIGHT, "M8x1.25-6H", new Make(TapMaterial.CARBON, null, false));
        assertThat(codes(Bench.cut(carbon, Bench.wish("304", 6.8, 16, Wear.SPENT, How.USUAL))))
                .contains("marginTooThin", "clearChips", "speedIsOfHss");
    }

    /** By hand: 2 pi 3.6311*.301596/1.25 = 5.505 mm3 a mm; back (120 - 37.242)/360 = .2299 turns. */
    @Test
    void roomAndTurnsOfM8ByHand() {
        CutForecast.Chips chips =
                Bench.cut(Bench.m8(), Bench.wish("C45", 6.8, 8)).chips();
        assertThat(chips.room().perDepth().mm2()).isCloseTo(5.505, within(0.001));
        assertThat(chips.room().clearAfter().expected())
                .isCloseTo(chips.room().flutes().mm2() * 22 / (5.505 * 6.5), within(0.005));
        ChipBreak turns = chips.turns();
        assertThat(turns).isNotNull();
        assertThat(turns.back()).isCloseTo(0.2299, within(0.0001));
        assertThat(turns.habitForward()).isGreaterThan(turns.habitBack());
    }

    /** A chip that bulks more fills the flutes sooner: brittle iron clears deeper than stringy stainless. */
    @Test
    void stringyChipsFillTheFlutesSooner() {
        double iron = Bench.cut(Bench.m8(), Bench.wish("EN-GJL-250", 6.8, 8))
                .chips()
                .room()
                .clearAfter()
                .expected();
        double stainless = Bench.cut(Bench.m8(), Bench.wish("304", 6.8, 8))
                .chips()
                .room()
                .clearAfter()
                .expected();
        assertThat(iron).isGreaterThan(2 * stainless);
    }

    @Test
    void aThinMarginAndAFullThreadAreSaidWithTheirFigures() {
        CutForecast cut = Bench.cut(Bench.m8(), Bench.wish("17-4PH H900", 6.5, 16, Wear.SPENT, How.USUAL));
        assertThat(cut.cautions())
                .filteredOn(caution -> List.of("marginTooThin", "shareHigh").contains(caution.code()))
                .extracting(landfall.fault.Caution::text)
                .hasSize(2)
                .allSatisfy(text -> assertThat(text).matches(".*\\d+ %.*").doesNotContain("%%", "%.0f"));
    }

    @Test
    void leftHandThreadsSendChipsTheOtherWay() {
        CutWish wish = Bench.wish("C45", 6.8, 8);
        assertThat(Bench.cut(Bench.m8(FluteKind.SPIRAL_RIGHT, "M8x1.25-6H", Make.PLAIN_HSS), wish)
                        .chips()
                        .flow())
                .isEqualTo(ChipFlow.BACK);
        assertThat(Bench.cut(Bench.m8(FluteKind.SPIRAL_RIGHT, "M8x1.25-6H-LH", Make.PLAIN_HSS), wish)
                        .chips()
                        .flow())
                .isEqualTo(ChipFlow.FORWARD);
    }

    @Test
    void everyReasonIsRefusedAtOnce() {
        Tap forming = Bench.m8(FluteKind.FORMING, "M8x1.25-6H", Make.PLAIN_HSS);
        CutWish wish = Bench.wish("AZ91", 6.0, 8, Wear.FRESH, Bench.fluid(CuttingFluid.EMULSION));
        assertThat(CutForecast.of(forming, wish).findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "flutes.kind: \"forming\" has no cutting edge: a forming tap presses its thread and"
                                + " makes no chip."
                                + " To mend: ask for the hole with --forming; its torque is two to three times"
                                + " that of a"
                                + " cutting tap.",
                        "hole: \"6.000 mm (0.2362 in)\" must be over the diameter at the tap's point, 6.400 mm"
                                + " (0.2520 in): the tap would not start. To mend: open the hole, or take a tap with a"
                                + " longer chamfer.",
                        "fluid: \"emulsion\" has water in it: on magnesium water feeds fire and frees hydrogen."
                                + " To mend:"
                                + " use mineral oil (light-oil), or cut dry with the chips kept apart.");
    }

    @Test
    void aTaperPipeTapIsRefused() {
        Tap pipe = Bench.raked("1/2-14 NPT", 4, 2.5, 8);
        double hole = pipe.chamfer().pointDiameter().mm() + 0.3;
        assertThat(CutForecast.of(pipe, Bench.wish("C45", hole, 15)).findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "thread: \"1/2-14 NPT\" is a taper thread: its tap cuts along the whole body, with torque"
                                + " rising to the very end. To mend: no torque of a straight tap is given for"
                                + " it; turn by feel,"
                                + " with oil, and stop at the gauge's mark.");
    }

    private static double torque(CutWish wish) {
        return Bench.cut(Bench.m8(), wish).load().torque().full().expected();
    }

    private static List<String> codes(CutForecast cut) {
        return cut.cautions().stream().map(landfall.fault.Caution::code).toList();
    }
}
