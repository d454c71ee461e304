// SPDX-License-Identifier: Apache-2.0
package landfall.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.Random;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.gauge.GaugeWish;
import landfall.gauge.ReadingUncertainty;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Measured;
import landfall.tap.mark.TapMark;
import landfall.thread.callout.CallOuts;
import landfall.verdict.Found.Worn;
import landfall.working.Worked;
import landfall.working.WorkingCheck;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The verdict on a tap, a hole, a screw")
class ExaminationTest {
    private static final ReadingUncertainty TENTH =
            new ReadingUncertainty(Length.ofInch(0.0001), Length.ZERO, Length.ofInch(0.0001), Angle.ofDeg(0), false);

    private static Worked<Examination> worked(String thread, Examination.Asked asked) {
        return Examination.of(CallOuts.read(thread).orThrow(), asked).orThrow();
    }

    private static Found found(String thread, @Nullable Double pitchInch, OnBench bench) {
        GaugeWish wish = new GaugeWish(null, pitchInch == null ? null : Length.ofInch(pitchInch), null, null);
        Worked<Examination> worked = worked(thread, new Examination.Asked(wish, null, TENTH, bench));
        WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
        return Objects.requireNonNull(worked.value().found());
    }

    private static OnBench.ATap tap(String mark, @Nullable Double runOut, @Nullable Integer rings) {
        return new OnBench.ATap(
                TapMark.read(mark).orElseThrow(), null, runOut == null ? null : Length.ofInch(runOut), rings);
    }

    /** The worked example of the note: 1/4-20 H3 (.2185 to .2190) in a 2B hole (.2175 to .2224), known to .0001. */
    @ParameterizedTest(name = "{0} with run-out {1}: {2}, worn {3}, hole {4}")
    @CsvSource({
        ".2187, .0008, GO,         NO,      GO",
        ".2190, .0008, BORDERLINE, NO,      GO",
        ".2185, .0008, BORDERLINE, PERHAPS, GO",
        ".2180, .0008, NOT_GO,     YES,     GO",
        ".2174, .0008, NOT_GO,     YES,     BORDERLINE",
        ".2160, .0008, NOT_GO,     YES,     NOT_GO",
        ".2187, .0050, GO,         NO,      BORDERLINE",
        ".2226, .0008, NOT_GO,     NO,      NOT_GO"
    })
    void aTapIsJudgedByItsOwnLimitsAndByTheHoleItWillCut(
            double E, double runOut, Verdict inLimits, Worn worn, Verdict hole) {
        Found found = found("1/4-20 UNC-2B", E, tap("H3", runOut, 0));
        Found.OfTap ofTap = Objects.requireNonNull(found.tap());
        assertThat(ofTap.inLimits()).isEqualTo(inLimits);
        assertThat(ofTap.worn()).isEqualTo(worn);
        CutHole cut = Objects.requireNonNull(ofTap.hole());
        assertThat(found.verdict()).isEqualTo(hole).isEqualTo(cut.verdict());
        assertThat(cut.pitch().low()).isCloseTo(25.4 * (E - 0.0001), within(1e-9));
        assertThat(cut.pitch().expected()).isCloseTo(25.4 * (E + runOut / 2), within(1e-9));
        assertThat(cut.pitch().high()).isCloseTo(25.4 * (E + 0.0001 + runOut), within(1e-9));
    }

    @Test
    void whichPlugFailsIsTold() {
        CutHole small = Objects.requireNonNull(Objects.requireNonNull(
                        found("1/4-20 UNC-2B", .2160, tap("H3", .0008, 0)).tap())
                .hole());
        assertThat(small.go()).isEqualTo(Verdict.NOT_GO);
        assertThat(small.notGo()).isEqualTo(Verdict.GO);
        CutHole large = Objects.requireNonNull(Objects.requireNonNull(
                        found("1/4-20 UNC-2B", .2230, tap("H3", .0008, 0)).tap())
                .hole());
        assertThat(large.go()).isEqualTo(Verdict.GO);
        assertThat(large.notGo()).isEqualTo(Verdict.NOT_GO);
    }

    @Test
    void anUndersizeTapIsNotCalledWornBeforeItsRingsAreKnown() {
        Found unknown = found("1/4-20 UNC-2B", .2160, tap("H3", null, null));
        assertThat(Objects.requireNonNull(unknown.tap()).worn()).isEqualTo(Worn.PERHAPS);
        assertThat(unknown.cautions()).extracting(Caution::code).contains("ringsNotTold");
        Found second = found("1/4-20 UNC-2B", .2160, tap("H3", null, 2));
        assertThat(Objects.requireNonNull(second.tap()).worn()).isEqualTo(Worn.BY_DESIGN);
        Found last = found("1/4-20 UNC-2B", .2160, tap("H3", null, 3));
        assertThat(Objects.requireNonNull(last.tap()).worn()).isEqualTo(Worn.YES);
        assertThat(last.cautions()).extracting(Caution::code).containsExactly("holeIsAnEstimate");
    }

    /** M10x1.5-6H: minor 8.376 to 8.676 mm; NOT GO may go in two turns; twelve full threads are 18 mm. */
    @ParameterizedTest
    @CsvSource({
        "8.50, true,  1.0, 14, GO",
        "8.68, true,  1.0, 14, BORDERLINE",
        "8.72, true,  1.0, 14, NOT_GO",
        "8.50, false, 1.0, 14, NOT_GO",
        "8.50, true,  2.1, 14, BORDERLINE",
        "8.50, true,  3.0, 14, NOT_GO",
        "8.50, true,  1.0, 12, BORDERLINE",
        "8.50, true,  1.0, 11, NOT_GO"
    })
    void aHoleIsJudgedByPinPlugsAndDepth(double pin, boolean goes, double notGo, double turns, Verdict verdict) {
        OnBench hole = new OnBench.AHole(
                new Measured(Length.ofMm(pin), Length.ofMm(0.01)),
                new OnBench.Plugs(goes, turns, notGo, Length.ofMm(18)));
        assertThat(found("M10x1.5-6H", null, hole).verdict()).isEqualTo(verdict);
    }

    @Test
    void theDepthByTurnsLosesTheFirstThread() {
        OnBench hole = new OnBench.AHole(null, new OnBench.Plugs(null, 8.5, null, null));
        Found found = found("M10x1.5-6H", null, hole);
        assertThat(found.verdict()).isNull();
        assertThat(Objects.requireNonNull(found.depth()).full()).isEqualTo(Limits.ofMm(11.25, 12.75));
    }

    @Test
    void aScrewIsJudgedByItsOwnClass() {
        // 1/2-13 UNC-2A: pitch .4435 to .4485, major .4876 to .4985 (published limits)
        OnBench screw = new OnBench.AScrew(new Measured(Length.ofInch(.4950), Length.ofInch(.0002)));
        assertThat(found("1/2-13 UNC-2A", .4460, screw).verdict()).isEqualTo(Verdict.GO);
        assertThat(found("1/2-13 UNC-2A", .4485, screw).verdict()).isEqualTo(Verdict.BORDERLINE);
        assertThat(found("1/2-13 UNC-2A", .4490, screw).verdict()).isEqualTo(Verdict.NOT_GO);
    }

    @Test
    void aHoleOfAScrewsClassIsRefused() {
        Answer<Worked<Examination>> answer = Examination.of(
                CallOuts.read("M8-6g").orThrow(),
                new Examination.Asked(
                        GaugeWish.NOTHING,
                        null,
                        null,
                        new OnBench.AHole(null, new OnBench.Plugs(true, null, null, null))));
        assertThat(answer.findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.sentence())
                        .isEqualTo(
                                "part: \"hole\" must be a part that M8x1.25-6g has limits for. To mend: leave the class out of the"
                                        + " call-out, or name one of that side."));
    }

    /** The law of the verdict: it never says GO or NOT_GO when the true size could lie on the other side. */
    @Test
    void neitherSideIsEverCalledWrongWithinTheUncertainty() {
        Random random = new Random(5);
        Limits limits = Limits.ofMm(9.0, 9.2);
        for (int i = 0; i < 20_000; i++) {
            double truth = 8.9 + random.nextDouble() * 0.4;
            double u = random.nextDouble() * 0.05;
            double read = truth + (2 * random.nextDouble() - 1) * u;
            Verdict verdict = Verdict.of(new Measured(Length.ofMm(read), Length.ofMm(u)), limits);
            if (verdict == Verdict.GO) {
                assertThat(truth).isBetween(9.0 - 1e-8, 9.2 + 1e-8);
            } else if (verdict == Verdict.NOT_GO) {
                assertThat(truth < 9.0 + 1e-8 || truth > 9.2 - 1e-8).isTrue();
            }
        }
    }

    /** 1/2-14 NPT: one turn is 1/14 in deep and opens the hole by 1/224 in; 1/8 turn is what can be seen. */
    @ParameterizedTest
    @CsvSource({
        "0,       GO,         0",
        ".05,     GO,         0.7",
        ".0714,   BORDERLINE, 0.9996",
        ".1,      NOT_GO,     1.4",
        "-.05,    GO,         0",
        "-.1,     NOT_GO,     0"
    })
    void aTaperHoleIsJudgedByTheStandOffOfItsPlug(double inch, Verdict verdict, double more) {
        Worked<Examination> worked = worked(
                "1/2-14 NPT",
                new Examination.Asked(GaugeWish.NOTHING, Length.ofInch(inch), null, new OnBench.Nothing()));
        WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
        TaperPlug plug = Objects.requireNonNull(worked.value().taper());
        assertThat(plug.turn().depth().inch()).isCloseTo(1.0 / 14, within(1e-12));
        assertThat(plug.turn().growth().inch()).isCloseTo(1.0 / 224, within(1e-12));
        TaperPlug.Standing found = Objects.requireNonNull(plug.found());
        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.more()).isCloseTo(more, within(1e-4));
        assertThat(found.overSize().inch()).isCloseTo(-inch / 16, within(1e-12));
    }

    /** Hand-tight length .320 in, pitch diameter there .77843 in (published E1). */
    @Test
    void theNotchStandsAtTheHandTightPlane() {
        TaperPlug plug = Objects.requireNonNull(
                worked("1/2-14 NPT", new Examination.Asked(GaugeWish.NOTHING, null, null, new OnBench.Nothing()))
                        .value()
                        .taper());
        assertThat(plug.notch().inch()).isCloseTo(0.320, within(1e-9));
        assertThat(plug.pitchDiameter().inch()).isCloseTo(0.77843, within(5e-6));
    }
}
