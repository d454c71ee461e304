// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.hole.HoleWish.Place;
import landfall.hole.HoleWish.Tools;
import landfall.quantity.Length;
import landfall.thread.callout.CallOuts;
import landfall.working.WorkingCheck;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The seat of a wire insert")
class InsertSeatTest {
    private static HoleWish wish(String thread, @Nullable Double depth, @Nullable Double insert) {
        return HoleWish.of(CallOuts.read(thread).orThrow())
                .at(new Place(
                        depth == null ? null : Length.ofMm(depth),
                        HoleEnd.BLIND,
                        null,
                        insert == null ? null : Length.ofMm(insert)));
    }

    private static HoleChoice hole(HoleWish wish) {
        return HoleChoice.of(wish).orThrow().value();
    }

    private static List<String> codes(HoleWish wish) {
        return hole(wish).cautions().stream().map(Caution::code).toList();
    }

    /**
     * 12 mm in M8 x 1.25: fitted 12 - .9375 to 12 - .625; down .9375 to 1.875; thread 13.25; drilled 12 + 4*1.25 = 17.
     */
    @Test
    void m8ByHand() {
        HoleChoice hole = hole(wish("STI M8x1.25-5H", null, 12.0));
        InsertSeat seat = hole.insert().orElseThrow();
        assertThat(requireNonNull(seat.fitted().min()).mm()).isCloseTo(11.0625, within(1e-9));
        assertThat(requireNonNull(seat.fitted().max()).mm()).isCloseTo(11.375, within(1e-9));
        assertThat(requireNonNull(seat.setDown().max()).mm()).isCloseTo(1.875, within(1e-9));
        assertThat(seat.fullThread().mm()).isCloseTo(13.25, within(1e-9));
        assertThat(seat.drill().mm()).isCloseTo(17.0, within(1e-9));
        assertThat(requireNonNull(hole.depth()).fullThread()).isEqualTo(seat.fullThread());
        assertThat(hole.depth().drill().mm()).isCloseTo(17.0, within(1e-9));
    }

    /** Plug taps of 4 threads: 12 + 4 + 7.5 to 8 mm, 15 + 9 over it; thread, chamfer and room come to 20.5 and 24. */
    @ParameterizedTest
    @CsvSource({"STI M8x1.25-5H, 12, 23.5, true", "STI M10x1.5-5H, 15, 24, false"})
    void aPlugTapWantsADeeperHole(String thread, double insert, double drill, boolean said) {
        HoleWish wish = wish(thread, null, insert).with(new Tools(null, null, 4.0, null));
        assertThat(hole(wish).insert().orElseThrow().drill().mm()).isCloseTo(drill, within(1e-9));
        assertThat(codes(wish).contains("insertDrillsDeeper")).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({"9.25, 8", "13.24, 8", "13.25, 12", "17.25, 16", "60, 24"})
    void theLongestInsertThatTheThreadHoldsIsTaken(double depth, double nominal) {
        assertThat(hole(wish("STI M8x1.25-5H", depth, null))
                        .insert()
                        .orElseThrow()
                        .nominal()
                        .mm())
                .isCloseTo(nominal, within(1e-9));
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        for (HoleWish wish : List.of(
                wish("STI M8x1.25-5H", null, 12.0),
                wish("STI M8x1.25-5H", 20.0, null),
                wish("STI M8x1.25-5H", 10.0, 12.0),
                wish("STI 1/4-20 UNC-2B", 19.0, null))) {
            WorkingCheck.everyFormulaGivesItsFigure(
                    HoleChoice.of(wish).orThrow().steps());
        }
    }

    @Test
    void whatDoesNotFitIsSaid() {
        assertThat(codes(wish("STI M8x1.25-5H", 8.0, null))).contains("tooShallowForInsert", "noStrength");
        assertThat(codes(wish("STI M8x1.25-5H", 10.0, 12.0))).contains("insertLongerThanThread");
        assertThat(codes(wish("STI M8x1.25-5H", null, null))).contains("insertNotTold");
        assertThat(codes(wish("STI 1/4-20 UNC-2B", 19.0, null))).contains("insertSeatMetric");
    }

    @Test
    void anInsertInAnotherHoleIsRefused() {
        assertThat(HoleChoice.of(wish("M8x1.25-6H", 12.0, 12.0)).findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "insert: \"12.000 mm (0.4724 in)\" is for a hole with a wire insert, which M8x1.25-6H is"
                                + " not. To mend: write the call-out as STI M8x1.25-6H, or leave the insert out.");
        assertThat(HoleChoice.of(wish("STI M8x1.25-5H", null, 6.0)).findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "insert: \"6.000 mm (0.2362 in)\" is shorter than one diameter, 8.000 mm (0.3150 in): none"
                                + " is made. To mend: take 1, 1.5, 2, 2.5 or 3 diameters.");
    }
}
