// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import landfall.choice.Crib;
import landfall.choice.OnHand;
import landfall.cost.Sittings;
import landfall.cut.Driven;
import landfall.drill.Drawer;
import landfall.drill.Drill;
import landfall.drill.DrillSeries;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.Happening;
import landfall.history.Status;
import landfall.hole.HoleEnd;
import landfall.material.Materials;
import landfall.material.WorkMaterial;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.Money;
import landfall.tap.FluteKind;
import landfall.thread.ScrewThread;
import landfall.thread.callout.CallOuts;
import landfall.wear.WearLaw;
import landfall.working.Rule;
import landfall.working.Step;
import landfall.working.Worked;
import landfall.working.WorkingCheck;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A drawing's holes as a route")
class RouteTest {
    static final WorkMaterial C45 = Materials.find("material", "C45").orThrow();
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 30);
    static final RouteWish.Prices PRICES =
            new RouteWish.Prices(new Money(60, "EUR"), new Money(18, "EUR"), new Money(40, "EUR"), 5);

    static HoleLine line(int number, String callOut, double depthMm, HoleEnd end, int count) {
        return new HoleLine(
                new HoleLine.Named(number, "", ""),
                CallOuts.read(callOut).orThrow(),
                C45,
                new HoleLine.Place(Length.ofMm(depthMm), end),
                count);
    }

    private static RouteWish wish(List<OnHand> taps, List<GaugeOnHand> gauges, HoleLine... lines) {
        return wish(DrillSeries.of(Drawer.METRIC), taps, gauges, List.of(lines));
    }

    private static RouteWish wish(
            List<Drill> drills, List<OnHand> taps, List<GaugeOnHand> gauges, List<HoleLine> lines) {
        return new RouteWish(lines, new RouteWish.Shop(drills, shelf(taps), gauges), Driven.Drive.MILL, PRICES, TODAY);
    }

    private static TapShelf shelf(List<OnHand> taps) {
        return new TapShelf() {
            @Override
            public List<OnHand> taps(WorkMaterial material) {
                return taps;
            }

            @Override
            public WearLaw law(ScrewThread thread, FluteKind flutes, WorkMaterial material) {
                return TapShelf.BARE.law(thread, flutes, material);
            }

            @Override
            public Sittings.@Nullable DueTap setUp(String mark) {
                return null;
            }
        };
    }

    private static Route route(RouteWish wish) {
        return Route.of(wish).orThrow().value();
    }

    private static GaugeOnHand gauge(String name, String callOut, @Nullable LocalDate due) {
        return new GaugeOnHand(
                name,
                CallOuts.read(callOut).orThrow(),
                GaugeOnHand.Ends.BOTH,
                Status.ON_HAND,
                new GaugeOnHand.Calibration(due, null));
    }

    private static List<String> kinds(Route route) {
        return route.operations().stream()
                .map(one -> one.kind().code() + " " + one.what() + " " + one.lines())
                .toList();
    }

    private static final HoleLine M8 = line(1, "M8x1.25-6H", 16, HoleEnd.BLIND, 12);
    private static final HoleLine M6 = line(2, "M6x1-6H", 12, HoleEnd.THROUGH, 4);
    private static final HoleLine M8_THROUGH = line(3, "M8x1.25-6H", 10, HoleEnd.THROUGH, 2);

    @Test
    void drillsGoFromThinToThickEachOnceAndEveryHoleIsDrilledBeforeTheFirstTap() {
        OnHand tap = Crib.tap("T-8", "M8x1.25-6H", FluteKind.SPIRAL_RIGHT, C45);
        OnHand six = Crib.tap("T-6", "M6x1-6H", FluteKind.SPIRAL_POINT, C45);
        Route route = route(wish(List.of(tap, six), List.of(gauge("G-8", "M8x1.25-6H", null)), M8, M6, M8_THROUGH));
        assertThat(kinds(route))
                .containsExactly(
                        "gauges G-8 [1, 2, 3]",
                        "drill 5 mm [2]",
                        "drill 6.8 mm [1, 3]",
                        "countersink 90 or 120 deg [1, 2, 3]",
                        "tap T-6 [2]",
                        "tap T-8 [1, 3]");
        assertThat(route.shortages())
                .extracting(one -> one.kind() + " " + one.lines() + " " + one.says())
                .containsExactly("GAUGE [2] GO and NOT GO plug M6x1-6H is not here");
    }

    /** One tap must last for all lines of its thread: 12 holes of 16 mm and 2 of 10 are 14 of 15.14 mm. */
    @Test
    void aTapIsJudgedByAllHolesOfItsThreadAndMaterial() {
        Route route = route(wish(List.of(), List.of(), M8, M6, M8_THROUGH));
        assertThat(route.holes().get(0).tap().ahead().job().holes()).isEqualTo(14);
        Length depth = route.holes().get(2).tap().ahead().job().depth();
        assertThat(depth == null ? 0 : depth.mm()).isCloseTo((12 * 16 + 2 * 10) / 14.0, within(1e-12));
    }

    /**
     * Worked by hand, as in the note: M8 in C45, 16 mm blind, 12 holes, on a mill, 6.8 mm drill. The list gives C45 6
     * to 12 m/min for taps, so the drill has 2 times 9: 842.6 rev/min, 0.136 mm each turn. To its tip it goes 21.79 mm.
     */
    @Test
    void timeOfOneLineWorkedByHand() {
        OnHand tap = Crib.tap("T-8", "M8x1.25-6H", FluteKind.SPIRAL_RIGHT, C45);
        Route route = route(wish(List.of(tap), List.of(), M8));
        Planned.Times times = route.holes().get(0).work().times();
        double t_h = (21.7929 + 3) / (842.585 * 0.136);
        assertThat(t_h).isCloseTo(0.21636, within(1e-5));
        close(times.drilling(), 12 * (0.2 + 0.7 * t_h), 12 * (0.4 + t_h), 12 * (1 + 2 * t_h));
        close(times.sinking(), 12 * 0.25, 12 * 0.5, 12 * 1.2);
        double t_all = 2 * (60 * 21.5 / (1.25 * 201.4305) + 201.4305 / 60 / 50);
        assertThat(t_all).isCloseTo(10.381, within(1e-3));
        close(times.tapping(), 12 * (0.2 + 0.7 * t_all / 60), 12 * (0.4 + t_all / 60), 12 * (1 + 2 * t_all / 60));
        close(times.gauging(), 2 * 0.5, 2 * 1, 2 * 2);
        close(route.totals().time(), 4 * 2 + 4.2174 + 3 + 3.8533 + 1, 38.2725, 4 * 8 + 17.1926 + 14.4 + 16.1524 + 4);
    }

    private static void close(Timed timed, double low, double expected, double high) {
        assertThat(timed.minutes().low()).isCloseTo(low, within(1e-3));
        assertThat(timed.minutes().expected()).isCloseTo(expected, within(1e-3));
        assertThat(timed.minutes().high()).isCloseTo(high, within(1e-3));
    }

    /** The hour at 60 EUR, and 12 holes at what C45 costs a tap: 300 holes in a run, one in 25 breaks. */
    @Test
    void costIsTheHourAndTheTaps() {
        OnHand tap = Crib.tap("T-8", "M8x1.25-6H", FluteKind.SPIRAL_RIGHT, C45);
        Totals totals = route(wish(List.of(tap), List.of(), M8)).totals();
        Band work = cost(totals.work());
        Band taps = cost(totals.taps());
        Band all = cost(totals.all());
        assertThat(work.expected()).isCloseTo(38.2725, within(1e-4));
        assertThat(taps.expected()).isCloseTo(12 * 0.0275443, within(1e-5));
        assertThat(all.low()).isCloseTo(work.low() + taps.low(), within(1e-12));
        assertThat(all.high()).isCloseTo(work.high() + taps.high(), within(1e-12));
    }

    private static Band cost(Totals.@Nullable Cost cost) {
        assertThat(cost).isNotNull();
        return cost == null ? new Band(0, 0, 0) : cost.amount();
    }

    /** Prices bring in the symbols of another question; its own test holds those. */
    @Test
    void everyFormulaGivesItsFigure() {
        OnHand tap = Crib.tap("T-8", "M8x1.25-6H", FluteKind.SPIRAL_RIGHT, C45);
        RouteWish priced = wish(List.of(tap, dull("T-6", "M6x1")), List.of(), M8, M6);
        RouteWish unpriced = new RouteWish(
                priced.holes(), priced.shop(), Driven.Drive.HAND, RouteWish.Prices.UNTOLD, priced.today());
        WorkingCheck.everyFormulaGivesItsFigure(Route.of(unpriced).orThrow().steps());
        List<Step> ofCost = Route.of(priced).orThrow().steps().stream()
                .filter(step -> step.symbol().matches("m\\d+|C|C_[lh]|r_h|T_w(_[lh])?|K(\\d+|_[wt])?(_[lh])?"))
                .map(step -> step.symbol().matches("C.*|T_w.*") ? new Step(given(step), step.value()) : step)
                .toList();
        assertThat(ofCost).extracting(Step::symbol).contains("K1", "K2_h", "K_t", "K_l");
        WorkingCheck.everyFormulaGivesItsFigure(ofCost);
    }

    private static Rule given(Step step) {
        return Rule.given(step.symbol(), step.rule().unit(), step.rule().means());
    }

    private static OnHand dull(String mark, String callOut) {
        Happening worn = new Happening.Measured(new Happening.Sizes(Length.ofMm(0.4), null, null, null));
        return Crib.tap(mark, callOut, FluteKind.SPIRAL_POINT, C45, Crib.holes(50, C45, 12), worn);
    }

    @Test
    void aDullTapIsSharpenedBeforeAnythingIsCut() {
        Route route = route(wish(List.of(dull("T-6", "M6x1")), List.of(gauge("G", "M6x1-6H", TODAY)), M6));
        assertThat(kinds(route).get(0)).isEqualTo("sharpen T-6 [2]");
        assertThat(route.holes().get(0).tap().sharpenFirst()).isTrue();
        assertThat(route.shortages()).isEmpty();
        // 30 min to set up and 4 to grind, 0.7 to 2 times
        close(route.operations().get(0).time(), 0.7 * 34, 34, 68);
    }

    @Test
    void whatIsShortIsToldWithItsLinesAndTheMend() {
        Drill seven = DrillSeries.of(Drawer.METRIC).stream()
                .filter(drill -> drill.name().equals("7"))
                .findFirst()
                .orElseThrow();
        OnHand lent = Crib.tap("T-8", "M8x1.25-6H", FluteKind.SPIRAL_RIGHT, C45, new Happening.Lent("bench 9"));
        HoleLine many = line(1, "M8x1.25-6H", 16, HoleEnd.BLIND, 2000);
        GaugeOnHand late = gauge("G-8", "M8x1.25-6H", LocalDate.of(2026, 10, 1));
        Route route = route(wish(List.of(seven), List.of(lent), List.of(late), List.of(many)));
        assertThat(route.shortages())
                .extracting(Shortage::kind)
                .containsExactly(Shortage.Kind.DRILL, Shortage.Kind.TAP, Shortage.Kind.LIFE, Shortage.Kind.CALIBRATION);
        assertThat(route.shortages())
                .extracting(one -> one.says() + " -> " + one.mend())
                .satisfiesExactly(
                        drill -> assertThat(drill)
                                .startsWith("No drill in the drawers leaves a hole inside the limits of M8x1.25-6H, ")
                                .contains("the nearest is 7 mm -> borrow or buy "),
                        tap -> assertThat(tap)
                                .isEqualTo(
                                        "No tap on record can do M8x1.25-6H. T-8: It is lent to bench 9: ask for it"
                                                + " back. Too dull for 2000 holes: the chance that it is due before the last"
                                                + " one is 100 %. -> buy or borrow one: spiral flutes of the thread's own hand, class 2 (ISO 2)"),
                        life -> assertThat(life)
                                .startsWith("A sharp tap lasts about 225 of the 2000 holes of M8x1.25 (")
                                .endsWith("have 9 sharp taps ready, or sharpen on the way"),
                        gauge -> assertThat(gauge)
                                .isEqualTo("G-8 was due for calibration on 2026-10-01 -> calibrate it, or gauge with"
                                        + " another"));
    }

    @Test
    void aGaugeHoldsOnItsLastDayAndOneOfAnotherClassIsNone() {
        assertThat(route(wish(List.of(), List.of(gauge("G", "M6x1-6H", TODAY)), M6))
                        .holes()
                        .get(0)
                        .gauge()
                        .lack())
                .isEmpty();
        GaugePick other = GaugePick.of(M6.callOut(), List.of(gauge("G", "M6x1-4H", TODAY)), TODAY);
        assertThat(other.lack())
                .extracting(GaugePick.Lack::says)
                .containsExactly("GO and NOT GO plug M6x1-6H is not here");
        GaugePick untold = GaugePick.of(M6.callOut(), List.of(gauge("G", "M6", null)), TODAY);
        assertThat(untold.cautions())
                .containsExactly(
                        "No calibration of G is on record.",
                        "The class of G is not on its card: read it from the handle.");
    }

    /** Against every other order of the taps, by the time that is lost on average when one breaks. */
    @Test
    void noOrderOfTheTapsLosesLessWork() {
        Random chance = new Random(5);
        List<String> sizes = List.of("M3x0.5", "M4x0.7", "M5x0.8", "M6x1", "M8x1.25", "M10x1.5");
        for (int round = 0; round < 6; round++) {
            List<HoleLine> lines = new ArrayList<>();
            for (String size : sizes.subList(0, 2 + chance.nextInt(4))) {
                double d = CallOuts.read(size).orThrow().thread().major().mm();
                lines.add(line(
                        lines.size() + 1,
                        size,
                        d * (0.5 + chance.nextDouble()),
                        HoleEnd.THROUGH,
                        1 + chance.nextInt(60)));
            }
            Worked<Route> worked = Route.of(wish(DrillSeries.all(), List.of(), List.of(), lines))
                    .orThrow();
            List<double[]> taps = new ArrayList<>();
            List<Operation> operations = worked.value().operations();
            for (int i = 0; i < operations.size(); i++) {
                if (operations.get(i).kind() == Operation.Kind.TAP) {
                    taps.add(new double[] {
                        value(worked, "p_b" + (i + 1)),
                        operations.get(i).time().minutes().expected()
                    });
                }
            }
            double ours = lost(taps);
            permutations(taps, other -> assertThat(ours).isLessThanOrEqualTo(lost(other) + 1e-12));
        }
    }

    private static double value(Worked<Route> worked, String symbol) {
        return worked.steps().stream()
                .filter(step -> step.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static double lost(List<double[]> taps) {
        double whole = 1;
        double spent = 0;
        double lost = 0;
        for (double[] tap : taps) {
            spent += tap[1];
            lost += whole * tap[0] * spent;
            whole *= 1 - tap[0];
        }
        return lost;
    }

    private static void permutations(List<double[]> rest, Consumer<List<double[]>> each) {
        permutations(new ArrayList<>(), rest, each);
    }

    private static void permutations(List<double[]> first, List<double[]> rest, Consumer<List<double[]>> each) {
        if (rest.isEmpty()) {
            each.accept(first);
        }
        for (int i = 0; i < rest.size(); i++) {
            List<double[]> longer = new ArrayList<>(first);
            longer.add(rest.get(i));
            List<double[]> others = new ArrayList<>(rest);
            others.remove(i);
            permutations(longer, others, each);
        }
    }

    @Test
    void moreHolesTakeLongerAndCostMore() {
        double before = 0;
        for (int count : new int[] {1, 2, 10, 11, 100}) {
            Totals totals = route(wish(List.of(), List.of(), line(1, "1/4-20 UNC-2B", 12, HoleEnd.BLIND, count)))
                    .totals();
            assertThat(cost(totals.all()).expected()).isGreaterThan(before);
            before = cost(totals.all()).expected();
        }
    }

    @Test
    void whatCannotBePlannedIsRefusedLineByLine() {
        HoleLine pipe = line(1, "1/4-18 NPT", 12, HoleEnd.BLIND, 1);
        HoleLine screw = line(3, "M8x1.25-6g", 12, HoleEnd.BLIND, 1);
        Answer<Worked<Route>> refused = Route.of(wish(List.of(), List.of(), pipe, M6, screw));
        assertThat(refused.findings()).extracting(Finding::field).containsExactly("holes.1.callout", "holes.3.callout");
        assertThat(refused.findings().get(0).sentence())
                .isEqualTo(
                        "holes.1.callout: \"1/4-18 NPT\" is a taper thread: its whole body cuts, and one tap is made for it."
                                + " To mend: take the tap of that pipe thread, and give it the larger torque of a taper tap.");
    }

    @Test
    void moneyInTwoCurrenciesIsRefused() {
        RouteWish wish = wish(List.of(), List.of(), M6);
        Answer<Worked<Route>> refused = Route.of(new RouteWish(
                wish.holes(),
                wish.shop(),
                null,
                new RouteWish.Prices(new Money(60, "EUR"), new Money(18, "USD"), null, null),
                TODAY));
        assertThat(refused.findings()).extracting(Finding::field).containsExactly("tap-price");
    }

    @Test
    void whatWasNotToldIsSaid() {
        RouteWish wish = wish(List.of(), List.of(), M6);
        RouteWish bare = new RouteWish(
                wish.holes(), new RouteWish.Shop(null, TapShelf.BARE, List.of()), null, RouteWish.Prices.UNTOLD, TODAY);
        assertThat(route(bare).cautions())
                .extracting(caution -> caution.code())
                .contains("estimatedTimes", "driveAssumed", "drawersAssumed", "pricesUntold", "shards");
    }
}
