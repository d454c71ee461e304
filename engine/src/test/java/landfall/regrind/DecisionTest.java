// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.tap.Body;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.tap.ThreadRelief;
import landfall.tap.Wear;
import landfall.working.WorkingCheck;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Chamfer, face, cut off or scrap")
class DecisionTest {
    private static final Wear WEAR = Wear.of(Length.ofMm(0.2));

    @Test
    void aWornChamferIsGroundBack() {
        Decision decision = decide(Drawer.m10(), Damage.worn(WEAR));
        assertThat(decision.chosen().way()).isEqualTo(Way.CHAMFER);
        assertThat(requireNonNull(decision.chosen().thread()).mm()).isEqualTo(0.1845, within(5e-5));
        assertThat(requireNonNull(decision.chosen().share())).isEqualTo(0.1845 / 12, within(1e-5));
    }

    @Test
    void aTapWithNoThreadLeftToLoseHasItsFacesGround() {
        Tap shortTap = Drawer.with(
                Drawer.m10(),
                new Body(Length.ofMm(12.1), null, null, 0.001),
                Drawer.m10().pitch());
        Decision decision = decide(shortTap, Damage.worn(WEAR));
        assertThat(decision.chosen().way()).isEqualTo(Way.FACE);
        assertThat(decision.all().get(0).barred()).isEqualTo("leaves less thread than the tap must keep");
    }

    @Test
    void wornFlanksOfTheFullThreadAreMendedByTheFace() {
        Decision decision = decide(Drawer.m10(), damage(null, 0.4, null, null));
        assertThat(decision.chosen().way()).isEqualTo(Way.FACE);
        assertThat(requireNonNull(decision.chosen().land()).deg()).isEqualTo(Math.toDegrees(0.4 / 5), within(1e-9));
    }

    @Test
    void tornThreadsAreCutOffWithTheChamferInFrontOfThem() {
        Decision decision = decide(Drawer.m10(), damage(null, null, 3.0, null));
        assertThat(decision.chosen().way()).isEqualTo(Way.CUT_OFF);
        double chamfer = (10 - 8.4) / (2 * Math.tan(Math.toRadians(9)));
        assertThat(requireNonNull(decision.chosen().thread()).mm()).isEqualTo(chamfer + 3.05, within(1e-9));
    }

    @Test
    void aBrokenNoseIsCutBackToWholeLands() {
        Decision decision = decide(Drawer.m10(), damage(null, null, null, 2.0));
        assertThat(decision.chosen().way()).isEqualTo(Way.CUT_OFF);
        assertThat(requireNonNull(decision.chosen().thread()).mm()).isEqualTo(2.05, within(1e-9));
    }

    @Test
    void aTapBrokenTooFarUpIsScrap() {
        Decision decision = decide(Drawer.m10(), damage(null, null, 9.0, null));
        assertThat(decision.chosen().way()).isEqualTo(Way.SCRAP);
        assertThat(decision.all())
                .filteredOn(Choice::isOpen)
                .extracting(Choice::way)
                .containsExactly(Way.SCRAP);
    }

    @Test
    void scrapIsRightOnlyWhereNothingElseIsOpen() {
        Choice scrap = decide(Drawer.m10(), Damage.worn(WEAR)).all().get(3);
        assertThat(scrap.isOpen()).isFalse();
        assertThat(scrap.barred()).isEqualTo("another way mends the tap and leaves what it must keep");
    }

    @Test
    void aSpiralPointThatWouldNoLongerReachIsNotGroundBack() {
        Tap point = Drawer.m10(FluteKind.SPIRAL_POINT, ThreadRelief.NONE);
        // chamfer 5.051 + .1845 taken + two threads 3 = 8.236
        assertThat(decided(point, new Circumstances(null, Length.ofMm(8.2), null))
                        .all()
                        .get(0)
                        .barred())
                .isEqualTo(
                        "the spiral point would no longer reach two threads past the chamfer: grind the point first");
        assertThat(decided(point, new Circumstances(null, Length.ofMm(8.3), null))
                        .chosen()
                        .way())
                .isEqualTo(Way.CHAMFER);
    }

    /** .1845 of 12 mm of thread, of a tap worth 24: .369. Scrap costs the whole. */
    @Test
    void theMetalIsWorthItsShareOfTheTap() {
        Decision decision = decided(Drawer.m10(), new Circumstances(null, null, 24.0));
        assertThat(requireNonNull(decision.chosen().cost().money())).isEqualTo(24 * 0.1845 / 12, within(1e-4));
        assertThat(decision.all().get(3).cost().money()).isEqualTo(24.0);
        WorkingCheck.everyFormulaGivesItsFigure(
                Decision.of(Drawer.m10(), Damage.worn(WEAR), new Circumstances(null, null, 24.0))
                        .orThrow()
                        .steps());
    }

    private static Decision decided(Tap tap, Circumstances around) {
        return Decision.of(tap, Damage.worn(WEAR), around).orThrow().value();
    }

    @Test
    void aDeepChipIsGroundOutWithTheEndFirst() {
        Decision decision = decide(Drawer.m10(), damage(0.5, null, null, null));
        assertThat(decision.chosen().way()).isEqualTo(Way.CHAMFER);
        assertThat(decision.cautions()).extracting(Caution::code).contains("endFirst");
    }

    @Test
    void theDepthStopOfATaperTapMovesByWhatIsCutOff() {
        Decision cut = decide(Drawer.taper(), damage(null, null, null, 2.0));
        assertThat(cut.cautions()).extracting(Caution::code).contains("wholeBodyCuts", "cutSquare", "depthStopMoves");
        assertThat(cut.cautions())
                .filteredOn(caution -> caution.code().equals("depthStopMoves"))
                .extracting(caution -> caution.text().contains("stop the tap 2.050 mm (0.0807 in) earlier"))
                .containsExactly(true);
        assertThat(decide(Drawer.taper(), Damage.worn(WEAR)).cautions())
                .extracting(Caution::code)
                .contains("wholeBodyCuts")
                .doesNotContain("depthStopMoves");
        assertThat(decide(Drawer.m10(), damage(null, null, null, 2.0)).cautions())
                .extracting(Caution::code)
                .contains("cutSquare")
                .doesNotContain("wholeBodyCuts", "depthStopMoves");
    }

    @Test
    void facesOfSpiralFlutesAreNeverOpen() {
        Decision decision = decide(Drawer.m10(FluteKind.SPIRAL_RIGHT, ThreadRelief.NONE), Damage.worn(WEAR));
        assertThat(decision.chosen().way()).isEqualTo(Way.CHAMFER);
        assertThat(decision.all().get(1).barred())
                .isEqualTo("the faces of these flutes are not ground on a straight slide");
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        for (Damage damage : java.util.List.of(
                Damage.worn(WEAR),
                damage(0.3, null, null, null),
                damage(null, 0.4, null, null),
                damage(null, null, 2.0, 1.0),
                damage(null, null, null, 1.0))) {
            WorkingCheck.everyFormulaGivesItsFigure(
                    Decision.of(Drawer.m10(), damage).orThrow().steps());
        }
    }

    private static Decision decide(Tap tap, Damage damage) {
        return Decision.of(tap, damage).orThrow().value();
    }

    private static Damage damage(
            @Nullable Double chip, @Nullable Double flank, @Nullable Double torn, @Nullable Double nose) {
        return new Damage(WEAR, length(chip), length(flank), length(torn), length(nose));
    }

    private static @Nullable Length length(@Nullable Double mm) {
        return mm == null ? null : Length.ofMm(mm);
    }
}
