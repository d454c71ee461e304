// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import landfall.material.Materials;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.Body;
import landfall.tap.ChamferGiven;
import landfall.tap.Cutting;
import landfall.tap.FluteForm;
import landfall.tap.FluteKind;
import landfall.tap.Flutes;
import landfall.tap.Land;
import landfall.tap.Make;
import landfall.tap.PitchZone;
import landfall.tap.Tap;
import landfall.tap.ThreadRelief;
import landfall.tap.Wear;
import landfall.thread.callout.CallOuts;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("From a symptom to its causes")
class DiagnosisTest {
    private static final Set<String> FACTS = Set.of(
            "",
            "chip-thin",
            "chip-thick",
            "chips-pack",
            "gap",
            "rake",
            "limit-high",
            "limit-low",
            "drill",
            "lead",
            "stack",
            "gummy",
            "hardens",
            "springs",
            "relief",
            "speed",
            "fluid",
            "bar",
            "overrun",
            "margin",
            "wear",
            "kind");
    private static final Set<String> PAGES =
            Set.of("", "thread", "hole", "tap", "cut", "grind", "gauge", "dial", "why");

    private static Tap m8(int flutes, double chamferDeg) {
        return new Tap(
                CallOuts.read("M8x1.25-6H").orThrow(),
                new Cutting(
                        Flutes.straight(flutes),
                        new Land.Arc(Length.ofMm(2.6)),
                        new ChamferGiven(Angle.ofDeg(chamferDeg), Length.ofMm(6.4), null),
                        ThreadRelief.NONE),
                Body.UNKNOWN,
                PitchZone.UNKNOWN,
                Make.PLAIN_HSS);
    }

    private static List<Diagnosis.Ranked> causes(String symptom, Known known) {
        return Diagnosis.of(Symptom.named(symptom).orElseThrow(), known).value().causes();
    }

    @Test
    void everySymptomHasSeveralCausesWithCheckAndMend() {
        assertThat(Symptom.all()).hasSize(14);
        for (Symptom symptom : Symptom.all()) {
            assertThat(causes(symptom.code(), Known.NOTHING))
                    .as(symptom.code())
                    .hasSizeGreaterThanOrEqualTo(3)
                    .allSatisfy(ranked -> {
                        assertThat(ranked.cause().cause()).isNotBlank();
                        assertThat(ranked.cause().check()).isNotBlank();
                        assertThat(ranked.cause().mend()).isNotBlank();
                        assertThat(FACTS).contains(ranked.cause().fact());
                        assertThat(PAGES).contains(ranked.cause().page());
                    });
        }
    }

    @Test
    void everyCauseBelongsToASymptomAndStandsOnce() {
        Set<String> codes = Symptom.all().stream().map(Symptom::code).collect(Collectors.toSet());
        assertThat(Cause.all()).allSatisfy(cause -> assertThat(codes).contains(cause.symptom()));
        assertThat(Cause.all().stream().map(cause -> cause.symptom() + cause.cause()))
                .doesNotHaveDuplicates();
    }

    @Test
    void noNameLeadsToTwoSymptoms() {
        assertThat(Symptom.all().stream()
                        .flatMap(symptom -> java.util.stream.Stream.concat(
                                List.of(symptom.code()).stream(), symptom.others().stream())))
                .doesNotHaveDuplicates();
    }

    @Test
    void theLikeliestStandFirst() {
        for (Symptom symptom : Symptom.all()) {
            assertThat(causes(symptom.code(), Known.NOTHING).stream()
                            .map(ranked -> -ranked.likelihood().ordinal()))
                    .isSorted();
        }
    }

    @Test
    void aSymptomIsKnownByItsOtherNames() {
        assertThat(Symptom.named("NOT GO").orElseThrow().code()).isEqualTo("oversize");
        assertThat(Symptom.named("Bell mouth").orElseThrow().code()).isEqualTo("bell-mouth");
        assertThat(Symptom.named("pick up").orElseThrow().code()).isEqualTo("built-up-edge");
        assertThat(Symptom.named("toothache")).isEmpty();
    }

    @Test
    void theChipOfThisTapSpeaksForOrAgainst() {
        Known tap = new Known(null, m8(3, 9), null);
        Diagnosis diagnosis =
                Diagnosis.of(Symptom.named("squeal").orElseThrow(), tap).value();
        // 1.25/3 x sin 9 = .0652 mm; 1/3 - 37.242/360 = .2299 turns
        assertThat(diagnosis.tap().orElseThrow().chip().mm()).isCloseTo(0.06518, within(1e-5));
        assertThat(diagnosis.tap().orElseThrow().backTurn()).isCloseTo(0.22988, within(1e-5));
        assertThat(likelihood(diagnosis, "chip-thin")).isEqualTo(Likelihood.SELDOM);
        Diagnosis thin = Diagnosis.of(
                        Symptom.named("squeal").orElseThrow(),
                        new Known(
                                null,
                                m8(4, 4),
                                Materials.find("material", "304").orThrow()))
                .value();
        assertThat(likelihood(thin, "chip-thin")).isEqualTo(Likelihood.LIKELY);
        assertThat(thin.causes().stream().map(Diagnosis.Ranked::here))
                .contains("A full chip of this tap is 0.022 mm (0.0009 in), under 0.025 mm: it rubs.");
    }

    private static Likelihood likelihood(Diagnosis diagnosis, String fact) {
        return diagnosis.causes().stream()
                .filter(ranked -> ranked.cause().fact().equals(fact))
                .findFirst()
                .orElseThrow()
                .likelihood();
    }

    @Test
    void theCallOutBringsItsHoleAndDrill() {
        Known known = new Known(CallOuts.read("1/4-20 UNC-2B").orThrow(), null, null);
        assertThat(causes("breaks-at-entry", known).stream().map(Diagnosis.Ranked::here))
                .contains(
                        "The hole wants 4.978 mm (0.1960 in) to 5.258 mm (0.2070 in); drill #7 leaves 75 % of thread.");
    }

    private static Tap whole() {
        FluteForm form = new FluteForm(Length.ofMm(3.5), Length.ofMm(2.1), Angle.ofDeg(10));
        return new Tap(
                CallOuts.read("M8x1.25-6H").orThrow(),
                new Cutting(
                        new Flutes(3, FluteKind.STRAIGHT, form, Angle.ZERO),
                        new Land.Arc(Length.ofMm(2.6)),
                        new ChamferGiven(Angle.ofDeg(9), Length.ofMm(6.4), null),
                        ThreadRelief.NONE),
                new Body(Length.ofMm(22), Length.ofMm(72), Length.ofMm(8), null),
                PitchZone.UNKNOWN,
                Make.PLAIN_HSS);
    }

    private static Known job(Tap tap, String material, double depth, Wear wear) {
        return new Known(
                null,
                tap,
                Materials.find("material", material).orThrow(),
                new Known.Job(Length.ofMm(6.8), Length.ofMm(depth), wear));
    }

    private static String here(Diagnosis diagnosis, String fact) {
        return diagnosis.causes().stream()
                .filter(ranked -> ranked.cause().fact().equals(fact))
                .findFirst()
                .orElseThrow()
                .here();
    }

    /**
     * M8 in C45, 12 mm, 6.8 hole: chips fill from 8.5 mm (see chip-room.md), so at 12 they pack and at 6 they do not.
     */
    @Test
    void theForecastOfThisCutSpeaksForOrAgainst() {
        Symptom bottom = Symptom.named("breaks-at-bottom").orElseThrow();
        Diagnosis deep =
                Diagnosis.of(bottom, job(whole(), "C45", 12, Wear.FRESH)).value();
        Diagnosis shallow =
                Diagnosis.of(bottom, job(whole(), "C45", 6, Wear.FRESH)).value();
        assertThat(likelihood(deep, "chips-pack")).isEqualTo(Likelihood.LIKELY);
        assertThat(likelihood(shallow, "chips-pack")).isEqualTo(Likelihood.POSSIBLE);
        assertThat(here(deep, "chips-pack")).contains("this thread is 12.0 mm deep");
        assertThat(here(deep, "overrun")).contains("may run on");
        assertThat(here(deep, "stack")).startsWith("Thread to 12.000 mm (0.4724 in), the tap's point to");
        assertThat(likelihood(deep, "margin")).isEqualTo(Likelihood.SELDOM);
        Diagnosis spent = Diagnosis.of(bottom, job(whole(), "17-4PH H900", 12, Wear.SPENT))
                .value();
        assertThat(likelihood(spent, "margin")).isEqualTo(Likelihood.LIKELY);
        assertThat(here(spent, "margin")).contains("N·m", "may break from");
    }

    @Test
    void barSpeedAndFluidComeWithTheirFigures() {
        Known job = job(whole(), "C45", 12, Wear.FRESH);
        assertThat(here(
                        Diagnosis.of(Symptom.named("breaks-at-entry").orElseThrow(), job)
                                .value(),
                        "bar"))
                .startsWith("Fingers are safe on a bar to");
        assertThat(here(Diagnosis.of(Symptom.named("squeal").orElseThrow(), job).value(), "fluid"))
                .isEqualTo("For 1045: sulphur oil.");
        Known noTap = new Known(
                CallOuts.read("M8x1.25-6H").orThrow(),
                null,
                Materials.find("material", "C45").orThrow());
        // 6 and 12 m/min over pi*8 mm: 239 and 477 rev/min
        assertThat(here(
                        Diagnosis.of(Symptom.named("squeal").orElseThrow(), noTap)
                                .value(),
                        "speed"))
                .isEqualTo("For 1045 6 to 12 m/min with HSS: 239 to 477 rev/min on this thread; less when deep.");
    }

    @Test
    void aCardThatCannotBeForecastSaysWhy() {
        Diagnosis diagnosis = Diagnosis.of(
                        Symptom.named("breaks-at-bottom").orElseThrow(), job(m8(3, 9), "C45", 12, Wear.FRESH))
                .value();
        assertThat(diagnosis.cut()).isEmpty();
        assertThat(diagnosis.cautions())
                .filteredOn(caution -> caution.code().equals("noForecast"))
                .extracting(landfall.fault.Caution::text)
                .first(org.assertj.core.api.InstanceOfAssertFactories.STRING)
                .startsWith("No torque is forecast: flutes.core:");
    }

    @Test
    void everyPrintedFormulaOfTheForecastGivesItsFigure() {
        for (Symptom symptom : Symptom.all()) {
            WorkingCheck.everyFormulaGivesItsFigure(
                    Diagnosis.of(symptom, job(whole(), "C45", 12, Wear.DUE)).steps());
        }
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        Known known =
                new Known(null, m8(3, 9), Materials.find("material", "6061-T6").orThrow());
        for (Symptom symptom : Symptom.all()) {
            WorkingCheck.everyFormulaGivesItsFigure(Diagnosis.of(symptom, known).steps());
        }
    }
}
