// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import landfall.chip.Evenness;
import landfall.cut.CutWish.Grip;
import landfall.cut.CutWish.Holding;
import landfall.cut.CutWish.How;
import landfall.cut.CutWish.Opening;
import landfall.cut.Driven.Drive;
import landfall.cut.Driven.Holder;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.tap.Make;
import landfall.tap.Tap;
import landfall.tap.Wear;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("How the tap is turned")
class DrivenTest {
    private static How blind(Driven driven) {
        return new How(null, Opening.BLIND, driven, How.USUAL.holding(), Evenness.ALIKE);
    }

    private static CutForecast cut(Driven driven) {
        return cut(driven, Wear.FRESH);
    }

    private static CutForecast cut(Driven driven, Wear wear) {
        return Bench.cut(Bench.m8(), Bench.wish("C45", 6.8, 12, wear, blind(driven)));
    }

    private static Driven machine(Drive drive, Holder holder, double feed) {
        return new Driven(drive, holder, true, null, Length.ofMm(feed));
    }

    private static List<String> codes(CutForecast cut) {
        return cut.cautions().stream().map(Caution::code).toList();
    }

    @ParameterizedTest
    @EnumSource(Holder.class)
    void everyPrintedFormulaGivesItsFigureForEveryMachineAndHolder(Holder holder) {
        for (Drive drive : List.of(Drive.DRILL_PRESS, Drive.LATHE, Drive.MILL)) {
            CutWish wish = Bench.wish("C45", 6.8, 12, Wear.DUE, blind(machine(drive, holder, 1.24)));
            WorkingCheck.everyFormulaGivesItsFigure(
                    CutForecast.of(Bench.m8(), wish).orThrow().steps());
        }
    }

    @Test
    void everyPrintedFormulaGivesItsFigureByHand() {
        Driven hand = new Driven(Drive.HAND, null, null, Length.ofMm(200), null);
        for (FluteKind kind : List.of(FluteKind.STRAIGHT, FluteKind.SPIRAL_POINT)) {
            Tap tap = Bench.m8(kind, "M8x1.25-6H", Make.PLAIN_HSS);
            CutWish wish = Bench.wish("C45", 6.8, 12, Wear.DUE, blind(hand));
            WorkingCheck.everyFormulaGivesItsFigure(
                    CutForecast.of(tap, wish).orThrow().steps());
        }
    }

    /**
     * 12 mm at 1.24 for 1.25 a turn: 12*(1.24/1.25 - 1) = -.096 mm; rigid at 32,000 N/mm: 3072 N; float at 16: 1.5 N.
     */
    @ParameterizedTest
    @CsvSource({"RIGID, 3072", "SYNCHRONISED, 211.2", "FLOAT, 1.536"})
    void aFeedOffTheLeadPushesByTheHoldersStiffness(Holder holder, double newton) {
        DriveEffect effect = cut(machine(Drive.MILL, holder, 1.24)).load().drive();
        assertThat(requireNonNull(effect.lag()).mm()).isCloseTo(-0.096, within(1e-9));
        assertThat(requireNonNull(effect.push()).expected()).isCloseTo(newton, within(1e-6 * newton));
    }

    @Test
    void aFeedOffTheLeadIsSaidByWhatItDoes() {
        assertThat(codes(cut(machine(Drive.MILL, Holder.RIGID, 1.24)))).contains("mill", "rigidHolder", "feedShaves");
        assertThat(codes(cut(machine(Drive.MILL, Holder.FLOAT, 1.24))))
                .contains("floatHolder", "floatTravel")
                .doesNotContain("feedShaves");
        assertThat(codes(cut(machine(Drive.MILL, Holder.FLOAT, 1.26)))).contains("feedOverLead");
        assertThat(codes(cut(machine(Drive.MILL, Holder.SYNCHRONISED, 1.25)))).doesNotContain("feedShaves");
        assertThat(codes(cut(machine(Drive.LATHE, Holder.FLOAT, 1.2)))).contains("lathe", "horizontal");
    }

    /** A slip lies between the torque at its highest and three quarters of the strength at its lowest. */
    @Test
    void aSlipIsSetBetweenWhatTheCutAsksForAndWhatTheTapBears() {
        CutForecast cut = cut(machine(Drive.DRILL_PRESS, Holder.REVERSING_HEAD, 1.25));
        DriveEffect.Slip slip = requireNonNull(cut.load().drive().slip());
        assertThat(slip.least().nm()).isEqualTo(cut.load().torque().full().high());
        assertThat(slip.most().nm())
                .isCloseTo(0.75 * cut.load().strength().breaking().low(), within(1e-12));
        assertThat(cut(machine(Drive.MILL, Holder.RIGID, 1.25)).load().drive().slip())
                .isNull();
        CutWish hard =
                Bench.wish("17-4PH H900", 6.5, 16, Wear.SPENT, blind(machine(Drive.DRILL_PRESS, Holder.SLIP, 1.25)));
        CutForecast thin = Bench.cut(Bench.m8(), hard);
        assertThat(thin.load().drive().slip()).isNull();
        assertThat(codes(thin)).contains("noRoomForSlip", "marginTooThin");
    }

    /**
     * Turns in: (12 + 4.041)/1.25 = 12.83 after the chamfer's length by pointDiameter 6.4 and 9 deg, .8/tan 9 = 5.051
     * on diameter .. (8 - 6.4)/2/tan 9 = 5.0510: (12 + 5.0510)/1.25 = 13.6408; (.75 + .5)/(.75 - .5) = 5 turns each and
     * one out, 20 a minute: 13.6408*6/20*60 = 245.5 s. A spiral point is not turned back: 13.6408*2/20*60 = 81.8 s.
     */
    @Test
    void timeByHandCountsTheTurnsBack() {
        assertThat(cut(Driven.by(Drive.HAND)).pace().time().s()).isCloseTo(245.5, within(0.1));
        Tap point = Bench.m8(FluteKind.SPIRAL_POINT, "M8x1.25-6H", Make.PLAIN_HSS);
        CutWish wish = Bench.wish("C45", 6.8, 12, Wear.FRESH, blind(Driven.by(Drive.HAND)));
        assertThat(Bench.cut(point, wish).pace().time().s()).isCloseTo(81.8, within(0.1));
        assertThat(cut(Driven.by(Drive.HAND)).pace().overrun()).isNull();
    }

    /**
     * In: 60*Z/(L*n), Z = 3 + 12 + 5.051; a reversing head is out again in that over 1.75, a switch costs .2 s a way.
     */
    @Test
    void aReversingHeadIsFasterThanASwitchedSpindle() {
        CutForecast head = cut(machine(Drive.DRILL_PRESS, Holder.REVERSING_HEAD, 1.25));
        CutForecast switched = cut(machine(Drive.DRILL_PRESS, Holder.FLOAT, 1.25));
        double in = 60
                * (3 + 12 + 0.8 / Math.tan(Math.toRadians(9)))
                / (1.25 * head.pace().spindle().revPerMin());
        assertThat(head.pace().time().s()).isCloseTo(in * (1 + 1 / 1.75), within(1e-9));
        assertThat(switched.pace().time().s()).isCloseTo(2 * (in + 0.2), within(1e-9));
    }

    @Test
    void onlyASpindleThatIsNotHeldToTheFeedRunsOn() {
        assertThat(cut(machine(Drive.MILL, Holder.SYNCHRONISED, 1.25)).pace().overrun())
                .isNull();
        assertThat(cut(machine(Drive.LATHE, Holder.FLOAT, 1.25)).pace().overrun())
                .isNotNull();
        assertThat(cut(Driven.by(Drive.DRILL_PRESS)).pace().overrun()).isNotNull();
    }

    /** 300 mm: fingers 25 N give 7.5, firm hands 100 N 30, the limit of 225 N 67.5 N m. */
    @Test
    void whatHandsGiveOnABar() {
        CutForecast cut = cut(new Driven(Drive.HAND, null, null, Length.ofMm(300), null));
        var gives = requireNonNull(cut.load().hand().gives());
        assertThat(gives.low()).isCloseTo(7.5, within(1e-12));
        assertThat(gives.expected()).isCloseTo(30, within(1e-12));
        assertThat(gives.high()).isCloseTo(67.5, within(1e-12));
        assertThat(codes(cut)).contains("barCanBreakTheTap").doesNotContain("barTooShort");
        assertThat(codes(cut(new Driven(Drive.HAND, null, null, Length.ofMm(40), null), Wear.SPENT)))
                .contains("barTooShort")
                .doesNotContain("barCanBreakTheTap");
    }

    @Test
    void whatDoesNotGoTogetherIsRefusedAtOnce() {
        Driven mixed = new Driven(Drive.HAND, Holder.FLOAT, null, null, Length.ofMm(2));
        Evenness two = new Evenness(Length.ZERO, List.of(Length.ZERO, Length.ofMm(0.01)));
        How how = new How(null, Opening.BLIND, mixed, new Holding(Grip.SQUARE, null), two);
        assertThat(CutForecast.of(Bench.m8(), Bench.wish("C45", 6.8, 12, Wear.FRESH, how))
                        .findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "heights: \"2 heights\" must be one for each of the 3 lands. To mend: give them in cutting"
                                + " order, backwards from land 1, 0 where a land is even.",
                        "holder: \"float\" is of a machine, but the tap is turned by hand. To mend: leave the holder"
                                + " out; give the bar of the wrench as bar.",
                        "feed: \"2.000 mm (0.0787 in)\" must lie within a tenth of the lead, 1.250 mm (0.0492 in):"
                                + " else the thread is torn out. To mend: give the feed of one turn that the machine"
                                + " is set to.");
        assertThatThrownBy(() -> new Evenness(Length.ofMm(0.02), List.of(Length.ZERO)))
                .hasMessage("heights: \"beside a run-out\" must be given without one. To mend: leave the run-out or"
                        + " the heights out.");
    }
}
