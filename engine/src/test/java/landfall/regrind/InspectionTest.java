// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import landfall.fault.Caution;
import landfall.grind.GrindWish;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Measured;
import landfall.tap.Tap;
import landfall.working.WorkingCheck;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Inspection of a reground tap")
class InspectionTest {
    private static final Length GROUND = Length.ofMm(0.2);
    private static final Length FINE = Length.ofMm(0.002);

    @Test
    void alikeChamfersAreGoodByBothRules() {
        Inspection found = inspect(reground(FINE, 5.05, 5.05, 5.05, 5.05));
        assertThat(verdict(found, "chamferLength")).isEqualTo(Verdict.GOOD);
        assertThat(verdict(found, "loadShare")).isEqualTo(Verdict.GOOD);
        assertThat(requireNonNull(found.worstShare())).isEqualTo(1, within(1e-12));
    }

    /** A tooth .015 mm proud at 9 degrees has a chamfer .0947 mm shorter (own numeric model). */
    @Test
    void aToothFifteenMicrometresProudHasAChamferNinetyFiveShorter() {
        Inspection found = inspect(reground(FINE, 5.05 - 0.0947, 5.05, 5.05, 5.05));
        double h0 = 1.5 / 4 * Math.tan(Math.toRadians(9));
        assertThat(requireNonNull(found.worstShare())).isEqualTo(1 + 0.015 / h0, within(5e-4));
    }

    @Test
    void theTwoRulesCanDisagreeAndTheAnswerSaysSo() {
        // .2 mm is under a fifth of the pitch, yet .53 of a chip of .0594
        Inspection found = inspect(reground(FINE, 4.85, 5.05, 5.05, 5.05));
        assertThat(verdict(found, "chamferLength")).isEqualTo(Verdict.GOOD);
        assertThat(verdict(found, "loadShare")).isEqualTo(Verdict.BAD);
        assertThat(found.cautions()).extracting(Caution::code).contains("rulesDisagree");
    }

    @Test
    void aLoupeToATenthCannotTellTheLoadShare() {
        Inspection found = inspect(reground(Length.ofMm(0.1), 5.05, 5.0, 5.05, 5.05));
        assertThat(verdict(found, "loadShare")).isEqualTo(Verdict.UNSURE);
        assertThat(found.cautions()).extracting(Caution::code).doesNotContain("rulesDisagree");
    }

    @Test
    void pitchDiameterIsJudgedLessBackTaperWithItsUncertainty() {
        // 9.082 to 9.110 less .001 x .2
        assertThat(verdict(inspect(pitch(9.09, 0.003)), "pitchDiameter")).isEqualTo(Verdict.GOOD);
        assertThat(verdict(inspect(pitch(9.0815, 0.001)), "pitchDiameter")).isEqualTo(Verdict.UNSURE);
        assertThat(verdict(inspect(pitch(9.0800, 0.001)), "pitchDiameter")).isEqualTo(Verdict.BAD);
        assertThat(verdict(inspect(pitch(9.1150, 0.001)), "pitchDiameter")).isEqualTo(Verdict.BAD);
    }

    @Test
    void aLandWithoutFallIsBadAndSoAreFallsThatDifferByMoreThanATenth() {
        assertThat(verdict(inspect(falls(0.36, 0.36, 0.35, 0.37)), "relief")).isEqualTo(Verdict.GOOD);
        assertThat(verdict(inspect(falls(0.36, 0.30, 0.35, 0.37)), "relief")).isEqualTo(Verdict.BAD);
        assertThat(verdict(inspect(falls(0.36, 0.36, 0.0, 0.37)), "relief")).isEqualTo(Verdict.BAD);
    }

    /** r 4.6, land 45 deg, ground 6.4646 deg: .4093; 4.4646 and 8.4646 deg: .2821 and .5377 (own calculation). */
    @Test
    void theFallIsHeldAgainstTheReliefThatIsWanted() {
        Check check = check(inspect(falls(0.41, 0.40, 0.42, 0.41)), "fall");
        assertThat(check.verdict()).isEqualTo(Verdict.GOOD);
        assertThat(check.rule())
                .isEqualTo("0.409 mm (0.0161 in) for 6.0 deg at work; from 0.282 mm (0.0111 in) to 0.538 mm"
                        + " (0.0212 in): two degrees either way (common practice)");
        assertThat(verdict(inspect(falls(0.283, 0.40, 0.42, 0.41)), "fall")).isEqualTo(Verdict.UNSURE);
        assertThat(verdict(inspect(falls(0.27, 0.40, 0.42, 0.41)), "fall")).isEqualTo(Verdict.BAD);
        assertThat(verdict(inspect(falls(0.55, 0.55, 0.55, 0.55)), "fall")).isEqualTo(Verdict.BAD);
    }

    /** With one degree wanted the least fall is that of the advance alone: r tan(.4646 deg) .7854 = .0293. */
    @Test
    void noLandIsRightWithoutWorkingRelief() {
        GrindWish little = new GrindWish(Angle.ofDeg(1), null, null, null, null);
        Inspection found = Inspection.of(
                        Drawer.m10(),
                        falls(0.1, 0.1, 0.1, 0.02),
                        new Inspection.Asked(GROUND, null, little, Looked.NOTHING))
                .value();
        assertThat(check(found, "fall").rule()).contains("from 0.029 mm (0.0012 in)");
        assertThat(verdict(found, "fall")).isEqualTo(Verdict.BAD);
    }

    /** .02 of .36 is 5.6 %; each known within .02 the difference is known within 7.9 %. */
    @Test
    void fallsThatADialCannotTellApartAreUnsure() {
        Reground coarse = new Reground(List.of(), Length.ofMm(0.02), lengths(0.36, 0.36, 0.35, 0.37), null, null);
        assertThat(verdict(inspect(coarse), "relief")).isEqualTo(Verdict.UNSURE);
    }

    @Test
    void whatWasLookedAtAndTriedIsJudgedToo() {
        assertThat(verdict(looked(true, 0.5), "trialHole")).isEqualTo(Verdict.GOOD);
        assertThat(verdict(looked(true, 2.5), "trialHole")).isEqualTo(Verdict.BAD);
        assertThat(verdict(looked(false, 0.0), "trialHole")).isEqualTo(Verdict.BAD);
        assertThat(verdict(looked(true, null), "trialHole")).isEqualTo(Verdict.UNSURE);
        assertThat(check(looked(true, 0.5), "trialHole").found()).isEqualTo("GO passes, NOT GO enters 0.5 turns");
        assertThat(verdict(looked(true, 0.5), "edges")).isEqualTo(Verdict.GOOD);
        assertThat(verdict(looked(true, 0.5), "burn")).isEqualTo(Verdict.BAD);
        assertThat(verdict(looked(true, 0.5), "heel")).isNull();
    }

    private static Inspection looked(Boolean go, @Nullable Double turns) {
        Looked looked = new Looked(true, false, null, new Looked.Trial(go, turns));
        Reground nothing = new Reground(List.of(), FINE, List.of(), null, null);
        return Inspection.of(Drawer.m10(), nothing, new Inspection.Asked(GROUND, null, GrindWish.USUAL, looked))
                .value();
    }

    @Test
    void runOutIsABoundOnOversize() {
        Inspection found = inspect(new Reground(List.of(), FINE, List.of(), Length.ofMm(0.025), null));
        assertThat(verdict(found, "runOut")).isEqualTo(Verdict.GOOD);
        assertThat(requireNonNull(found.oversize()).mm()).isEqualTo(0.025);
        assertThat(found.cautions()).extracting(Caution::code).contains("oversizeIsABound");
    }

    @Test
    void withoutReadingsItIsAPlanWithoutVerdicts() {
        Inspection plan = inspect(new Reground(List.of(), FINE, List.of(), null, null));
        assertThat(plan.checks()).hasSize(11).allSatisfy(check -> {
            assertThat(check.verdict()).isNull();
            assertThat(check.rule()).isNotBlank();
            assertThat(check.with()).isNotBlank();
        });
    }

    @Test
    void threeLengthsOnFourLandsAreRefused() {
        Tap tap = Drawer.m10();
        Reground three = reground(FINE, 5, 5, 5);
        assertThatThrownBy(() -> Inspection.of(tap, GROUND, three))
                .hasMessage("chamferLengths: \"3 lands\" must be 4, one for each land, or none. To mend: measure"
                        + " every land,"
                        + " counted backwards from land 1.");
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        Reground all = new Reground(
                lengths(4.95, 5.05, 5.10, 5.0),
                FINE,
                lengths(0.36, 0.35, 0.36, 0.36),
                Length.ofMm(0.02),
                new Measured(Length.ofMm(9.09), Length.ofMm(0.003)));
        WorkingCheck.everyFormulaGivesItsFigure(
                Inspection.of(Drawer.m10(), GROUND, all).steps());
    }

    /** d_p 8.4, .19 ground back at 9 deg: 8.4 - .0602 - .0950 = 8.2448 to 8.4 + .0950 = 8.4950. */
    @Test
    void thePointLiesBetweenTheEndLeftAloneAndGroundBack() {
        Reground nothing = new Reground(List.of(), FINE, List.of(), null, null);
        Length back = Length.ofMm(0.19);
        for (var tried : java.util.Map.of(8.40, Verdict.GOOD, 8.35, Verdict.GOOD, 8.20, Verdict.BAD, 8.55, Verdict.BAD)
                .entrySet()) {
            Measured point = new Measured(Length.ofMm(tried.getKey()), Length.ofMm(0.005));
            Check check = Inspection.of(Drawer.m10(), back, nothing, point).value().checks().stream()
                    .filter(one -> one.code().equals("pointDiameter"))
                    .findFirst()
                    .orElseThrow();
            assertThat(check.verdict()).isEqualTo(tried.getValue());
            assertThat(check.rule()).startsWith("from 8.245 mm (0.3246 in) (end left alone) to 8.495 mm");
        }
        Measured point = new Measured(Length.ofMm(8.4), Length.ZERO);
        WorkingCheck.everyFormulaGivesItsFigure(
                Inspection.of(Drawer.m10(), back, nothing, point).steps());
    }

    private static Inspection inspect(Reground reground) {
        return Inspection.of(Drawer.m10(), GROUND, reground).value();
    }

    private static @Nullable Verdict verdict(Inspection found, String code) {
        return check(found, code).verdict();
    }

    private static Check check(Inspection found, String code) {
        return found.checks().stream()
                .filter(check -> check.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static Reground reground(Length uncertainty, double... mm) {
        return new Reground(lengths(mm), uncertainty, List.of(), null, null);
    }

    private static Reground falls(double... mm) {
        return new Reground(List.of(), FINE, lengths(mm), null, null);
    }

    private static Reground pitch(double mm, double uncertainty) {
        return new Reground(List.of(), FINE, List.of(), null, new Measured(Length.ofMm(mm), Length.ofMm(uncertainty)));
    }

    private static List<Length> lengths(double... mm) {
        return Arrays.stream(mm).mapToObj(Length::ofMm).toList();
    }
}
