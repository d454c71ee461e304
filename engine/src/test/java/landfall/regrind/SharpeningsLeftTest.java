// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.Body;
import landfall.tap.FluteKind;
import landfall.tap.Least;
import landfall.tap.PitchZone;
import landfall.tap.Tap;
import landfall.tap.ThreadRelief;
import landfall.tap.Wear;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Sharpenings left")
class SharpeningsLeftTest {
    private static final LifeWish WORN = new LifeWish(Wear.of(Length.ofMm(0.2)), null, null);
    private static final ThreadRelief ECCENTRIC =
            new ThreadRelief(ThreadRelief.Kind.ECCENTRIC, Angle.ofDeg(1), Angle.ZERO);

    /** The method note's worked figures, checked there by an own numeric model: .1345 + .05, 24 to 12 mm, 65. */
    @Test
    void areSixtyFiveByTheChamferOfAnM10WithTwelveMillimetresToLose() {
        Tap tap = Drawer.with(
                Drawer.m10(),
                Drawer.m10().body(),
                new PitchZone(
                        Limits.ofMm(9.082, 9.110), new Least(Length.ofMm(12), Angle.ofDeg(30), Length.ofMm(9.000))));
        LeftByWay.ByChamfer chamfer = left(tap, WORN).chamfer();
        assertThat(chamfer.stock().mm()).isEqualTo(0.1345, within(5e-5));
        assertThat(chamfer.each().mm()).isEqualTo(0.1845, within(5e-5));
        assertThat(chamfer.count()).isEqualTo(65);
        assertThat(chamfer.limit()).isEqualTo(LifeLimit.THREAD_LENGTH);
    }

    /** The same note: 1/2-13, .008 in, .00538 + .002 in, 1.656 to .75 in, 122; face 1.83 deg. */
    @Test
    void areAHundredAndTwentyTwoByTheChamferOfAHalfInchTap() {
        SharpeningsLeft left = left(Drawer.half13(), new LifeWish(Wear.of(Length.ofInch(0.008)), null, null));
        assertThat(left.chamfer().stock().inch()).isEqualTo(0.00538, within(5e-6));
        assertThat(left.chamfer().count()).isEqualTo(122);
        LeftByWay.ByFace face = requireNonNull(left.face());
        assertThat(face.angle().deg()).isEqualTo(1.83, within(5e-3));
        assertThat(face.count()).isEqualTo(8); // a third of 45 degrees, 15/1.83
        assertThat(left.cautions()).extracting(Caution::code).contains("backTaperNotTold", "pitchDiameterNotTold");
    }

    /** The same note: wear .2 on R 5 is 2.29 deg, 45 to 30 deg six times; PD .00698 mm each at 1 deg thread relief. */
    @Test
    void areSixByTheFaces() {
        LeftByWay.ByFace plain = requireNonNull(left(Drawer.m10(), WORN).face());
        assertThat(plain.angle().deg()).isEqualTo(2.2918, within(5e-5));
        assertThat(plain.count()).isEqualTo(6);
        assertThat(plain.limit()).isEqualTo(LifeLimit.LAND_ANGLE);
        LeftByWay.ByFace relieved = requireNonNull(
                left(Drawer.m10(FluteKind.STRAIGHT, ECCENTRIC), WORN).face());
        assertThat(relieved.count()).isEqualTo(4); // .032 mm of pitch diameter, .00698 each
        assertThat(relieved.limit()).isEqualTo(LifeLimit.PITCH_DIAMETER);
    }

    @Test
    void aConcentricMarginIsSpentBeforeThePitchDiameterFalls() {
        ThreadRelief con = new ThreadRelief(ThreadRelief.Kind.CON_ECCENTRIC, Angle.ofDeg(1), Angle.ofDeg(5));
        // (.032/.1745 rad = 10.50 deg + 5 deg)/2.2918 = 6.8, the land allows 6
        assertThat(requireNonNull(
                                left(Drawer.m10(FluteKind.STRAIGHT, con), WORN).face())
                        .count())
                .isEqualTo(6);
    }

    @Test
    void theChamferIsLimitedByPitchDiameterWhereTheBackTaperIsSteep() {
        Tap steep = Drawer.with(
                Drawer.m10(),
                new Body(Length.ofMm(24), null, null, 0.005),
                Drawer.m10().pitch());
        LeftByWay.ByChamfer chamfer = left(steep, WORN).chamfer();
        assertThat(chamfer.limit()).isEqualTo(LifeLimit.PITCH_DIAMETER);
        assertThat(chamfer.count()).isEqualTo(34); // .032/(.005 x .1845)
    }

    @Test
    void theBestMixedPlanBeatsEitherWayAndNothingMoreFits() {
        Random random = new Random(21);
        for (int trial = 0; trial < 300; trial++) {
            double taper = 0.003 * random.nextDouble();
            double least = 9.082 - 0.06 * random.nextDouble();
            Tap tap = Drawer.with(
                    Drawer.m10(FluteKind.STRAIGHT, random.nextBoolean() ? ECCENTRIC : ThreadRelief.NONE),
                    new Body(Length.ofMm(13 + 11 * random.nextDouble()), null, null, taper),
                    new PitchZone(
                            Limits.ofMm(9.082, 9.110),
                            new Least(
                                    Length.ofMm(12), Angle.ofDeg(25 + 20 * random.nextDouble()), Length.ofMm(least))));
            SharpeningsLeft left = left(tap, WORN);
            LifeLine line = requireNonNull(left.line());
            LeftByWay.ByFace face = requireNonNull(left.face());
            int total = line.chamfers() + line.faces();
            assertThat(total).isEqualTo(exhaustive(tap, left, face));
            assertThat(total)
                    .isGreaterThanOrEqualTo(requireNonNull(left.chamfer().count()))
                    .isGreaterThanOrEqualTo(requireNonNull(face.count()));
            assertThat(line.stations()).hasSize(total + 1);
            LifeLine.Station last = line.stations().get(total);
            assertThat(last.pitchLost().mm()).isLessThanOrEqualTo(9.082 - least + 1e-9);
        }
    }

    /** Every pair of numbers, judged by the definitions and nothing else. */
    private static int exhaustive(Tap tap, SharpeningsLeft left, LeftByWay.ByFace face) {
        double each = left.chamfer().each().mm();
        double thread = requireNonNull(tap.body().threadLength()).mm() - 12;
        double land = 45 - requireNonNull(tap.pitch().least().landAngle()).deg();
        double pitch =
                9.082 - requireNonNull(tap.pitch().least().pitchDiameter()).mm();
        boolean eccentric = tap.cutting().relief().kind() == ThreadRelief.Kind.ECCENTRIC;
        double slope = eccentric ? 5 * Math.tan(Math.toRadians(1)) : 0;
        int best = 0;
        for (int chamfers = 0; chamfers * each <= thread + 1e-9; chamfers++) {
            for (int faces = 0; faces * face.angle().deg() <= land + 1e-9; faces++) {
                double lost = chamfers * each * requireNonNull(tap.body().backTaper())
                        + 2 * slope * Math.toRadians(faces * face.angle().deg());
                best = lost <= pitch + 1e-9 ? Math.max(best, chamfers + faces) : best;
            }
        }
        return best;
    }

    /** (8.4 - 4.5)/(2 x .1845 x tan 9) = 66.7 with the end kept; the thread allows 65, so the core must be thicker. */
    @Test
    void theCoreEndsItWhereTheEndIsKept() {
        LifeWish kept = new LifeWish(Wear.of(Length.ofMm(0.2)), null, null, null, LifeWish.End.KEPT);
        Tap thick = Drawer.cored(Drawer.m10(), 6.0);
        SharpeningsLeft left = left(thick, kept);
        double each = left.chamfer().each().mm();
        int byCore = (int) Math.floor((8.4 - 6.0) / (2 * each * Math.tan(Math.toRadians(9))));
        assertThat(left.chamfer().count()).isEqualTo(byCore).isLessThan(65);
        assertThat(left.chamfer().limit()).isEqualTo(LifeLimit.CORE);
        assertThat(requireNonNull(left.line()).chamfers()).isEqualTo(byCore);
        assertThat(left(thick, WORN).chamfer().limit()).isNotEqualTo(LifeLimit.CORE);
        assertThat(left(Drawer.half13(), kept).cautions())
                .extracting(Caution::code)
                .contains("coreNotTold");
    }

    @Test
    void aCapCountsForTheWholePlan() {
        SharpeningsLeft left = left(Drawer.m10(), new LifeWish(Wear.of(Length.ofMm(0.2)), null, 5));
        assertThat(left.chamfer().count()).isEqualTo(5);
        assertThat(left.chamfer().limit()).isEqualTo(LifeLimit.CAP);
        LifeLine line = requireNonNull(left.line());
        assertThat(line.chamfers() + line.faces()).isEqualTo(5);
    }

    @Test
    void aSpiralPointMustReachTwoThreadsPastTheChamfer() {
        Tap point = Drawer.m10(FluteKind.SPIRAL_POINT, ThreadRelief.NONE);
        SharpeningsLeft left = left(point, new LifeWish(Wear.of(Length.ofMm(0.2)), Length.ofMm(10), null));
        // chamfer (10 - 8.4)/(2 tan 9) = 5.051 long; (10 - 5.051 - 3)/.1845 = 10.6
        assertThat(left.chamfer().count()).isEqualTo(10);
        assertThat(left.chamfer().limit()).isEqualTo(LifeLimit.REACH);
        assertThat(left.face()).isNull();
        assertThat(left(point, WORN).cautions()).extracting(Caution::code).contains("reachNotTold", "faceNotGround");
    }

    @Test
    void whatTheCardLeavesOpenIsTakenByPracticeAndWrittenDown() {
        Tap open = Drawer.with(
                Drawer.m10(),
                new Body(Length.ofMm(24), null, null, 0.001),
                new PitchZone(Limits.ofMm(9.082, 9.110), Least.UNKNOWN));
        var worked = SharpeningsLeft.of(open, WORN).orThrow();
        assertThat(worked.steps())
                .filteredOn(step -> step.rule().trust() == landfall.working.Trust.PRACTICE)
                .extracting(step -> step.symbol())
                .contains("l_min", "θ_min");
        assertThat(requireNonNull(worked.value().face()).count()).isEqualTo(6); // 15 degrees, a third
    }

    @Test
    void moreWearNeverLeavesMoreSharpenings() {
        int before = Integer.MAX_VALUE;
        for (double wear = 0.05; wear < 0.6; wear += 0.05) {
            int now = requireNonNull(left(Drawer.m10(), new LifeWish(Wear.of(Length.ofMm(wear)), null, null))
                    .chamfer()
                    .count());
            assertThat(now).isLessThanOrEqualTo(before);
            before = now;
        }
    }

    @Test
    void aFormingTapIsRefusedWithTheMend() {
        var answer = SharpeningsLeft.of(Drawer.m10(FluteKind.FORMING, ThreadRelief.NONE), WORN);
        assertThat(answer).isInstanceOf(Answer.Refused.class);
        assertThat(answer.findings().get(0).sentence())
                .isEqualTo("flutes.kind: \"forming\" has no cutting edge to sharpen. To mend: replace a worn"
                        + " forming tap.");
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        LifeWish all = new LifeWish(Wear.DUE, Length.ofMm(12), 7, null, LifeWish.End.KEPT);
        WorkingCheck.everyFormulaGivesItsFigure(SharpeningsLeft.of(Drawer.cored(Drawer.m10(), 6.0), all)
                .orThrow()
                .steps());
        for (Tap tap : List.of(
                Drawer.m10(),
                Drawer.m10(FluteKind.STRAIGHT, ECCENTRIC),
                Drawer.m10(FluteKind.SPIRAL_POINT, ThreadRelief.NONE),
                Drawer.half13())) {
            WorkingCheck.everyFormulaGivesItsFigure(
                    SharpeningsLeft.of(tap, all).orThrow().steps());
        }
    }

    private static SharpeningsLeft left(Tap tap, LifeWish wish) {
        return SharpeningsLeft.of(tap, wish).orThrow().value();
    }
}
