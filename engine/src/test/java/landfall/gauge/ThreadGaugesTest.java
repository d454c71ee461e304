// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.Family;
import landfall.thread.Hand;
import landfall.thread.Lead;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.working.Recorded;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Plug and ring gauges")
class ThreadGaugesTest {
    private static final ScrewThread QUARTER = new ScrewThread(
            Family.UNIFIED, Profile.ISO_60, Length.ofInch(0.25), new Lead(Length.ofInch(0.05), 1), Hand.RIGHT);

    private static Limits inch(double min, double max) {
        return new Limits(Length.ofInch(min), Length.ofInch(max));
    }

    private static final SideLimits HOLE_2B = new SideLimits(
            Side.INTERNAL, "2B", Limits.from(Length.ofInch(0.25)), inch(0.2175, 0.2224), inch(0.196, 0.207));

    private static void is(Limits limits, double min, double max) {
        assertThat(limits.min().inch()).isCloseTo(min, within(1e-9));
        assertThat(limits.max().inch()).isCloseTo(max, within(1e-9));
    }

    /**
     * 1/4-20 UNC-2B with X .0003 and .0005, worked by hand: GO .2175-.2178, major .2500-.2505; NOT GO .2221-.2224,
     * major to .2224 + .02165 = .2441; pins .196 and .207.
     */
    @Test
    void aQuarterTwentyHoleIsGaugedAsWorkedByHand() {
        Recorded pen = new Recorded();
        ThreadGauges gauges = ThreadGauges.of(QUARTER, HOLE_2B, pen).orElseThrow();
        is(gauges.go().pitch(), 0.2175, 0.2178);
        is(gauges.go().major(), 0.25, 0.2505);
        is(gauges.notGo().pitch(), 0.2221, 0.2224);
        is(gauges.notGo().major(), 0.2436, 0.2441);
        assertThat(gauges.plain().go().inch()).isCloseTo(0.196, within(1e-9));
        assertThat(gauges.plain().notGo().inch()).isCloseTo(0.207, within(1e-9));
        WorkingCheck.everyFormulaGivesItsFigure(pen.steps());
    }

    @Test
    void aHoleWhoseGreatestMinorDiameterIsNotHeldHasNoPlainNotGo() {
        ScrewThread thread = new ScrewThread(
                Family.UNJ, Profile.J_60, Length.ofInch(0.25), new Lead(Length.ofMm(25.4 / 28), 1), Hand.RIGHT);
        SideLimits hole = new SideLimits(
                Side.INTERNAL,
                "3B",
                Limits.from(Length.ofInch(0.25)),
                new Limits(Length.ofInch(0.2268), Length.ofInch(0.23)),
                Limits.from(Length.ofInch(0.2152)));
        ThreadGauges gauges = ThreadGauges.of(thread, hole, new Recorded()).orElseThrow();
        assertThat(gauges.plain().go().inch()).isCloseTo(0.2152, within(1e-9));
        assertThat(gauges.plain().notGo()).isNull();
    }

    /** Ring and setting-plug limits read off a maker's chart: 5/8-18 2A GO .5875, NOT GO .5828, X .0003. */
    @Test
    void ringsLieInsideTheScrewsLimits() {
        ScrewThread thread = new ScrewThread(
                Family.UNIFIED, Profile.ISO_60, Length.ofInch(0.625), new Lead(Length.ofInch(1 / 18.0), 1), Hand.RIGHT);
        SideLimits screw = new SideLimits(
                Side.EXTERNAL, "2A", inch(0.6149, 0.6236), inch(0.5828, 0.5875), Limits.upTo(Length.ofInch(0.5635)));
        Recorded pen = new Recorded();
        ThreadGauges gauges = ThreadGauges.of(thread, screw, pen).orElseThrow();
        is(gauges.go().pitch(), 0.5872, 0.5875);
        is(gauges.notGo().pitch(), 0.5828, 0.5831);
        assertThat(gauges.go().major()).isEqualTo(GaugeElement.OPEN);
        assertThat(gauges.plain().go().inch()).isCloseTo(0.6236, within(1e-9));
        WorkingCheck.everyFormulaGivesItsFigure(pen.steps());
    }

    @Test
    void goLiesBelowNotGoAndBothInsideTheProduct() {
        ThreadGauges gauges =
                ThreadGauges.of(QUARTER, HOLE_2B, (rule, value) -> value).orElseThrow();
        assertThat(gauges.go().pitch().max()).isLessThan(gauges.notGo().pitch().min());
        assertThat(HOLE_2B.pitch().holds(gauges.go().pitch().min())).isTrue();
        assertThat(HOLE_2B.pitch().holds(gauges.notGo().pitch().max())).isTrue();
        assertThat(gauges.plain().go()).isLessThan(gauges.plain().notGo());
    }

    @Test
    void withoutAHeldToleranceTheGaugesStandAtTheLimitsAndSayIt() {
        ScrewThread m10 = new ScrewThread(
                Family.METRIC, Profile.ISO_60, Length.ofMm(10), new Lead(Length.ofMm(1.5), 1), Hand.RIGHT);
        SideLimits hole = new SideLimits(
                Side.INTERNAL,
                "6H",
                Limits.from(Length.ofMm(10)),
                Limits.ofMm(9.026, 9.206),
                Limits.ofMm(8.376, 8.676));
        ThreadGauges gauges = ThreadGauges.of(m10, hole, (rule, value) -> value).orElseThrow();
        assertThat(gauges.go().pitch()).isEqualTo(Limits.ofMm(9.026, 9.026));
        assertThat(gauges.notGo().pitch()).isEqualTo(Limits.ofMm(9.206, 9.206));
        assertThat(gauges.cautions().stream().map(Caution::code)).contains("gaugeToleranceNotHeld", "gaugeUse");
    }
}
