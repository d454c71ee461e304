// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import landfall.cost.Shelf.Spans;
import landfall.cost.Shelf.Stocked;
import landfall.fault.Caution;
import landfall.quantity.Money;
import landfall.quantity.TimeSpan;
import landfall.working.WorkingCheck;
import org.hipparchus.distribution.discrete.PascalDistribution;
import org.junit.jupiter.api.Test;

class ShelfTest {
    private static final double WEEK = 7 * 86400;

    @Test
    void theExampleOfTheNote() {
        var worked = Shelf.of(new Stocked(2, 8, 0), weeks(52, 2, 4), 0.05, new Money(20, "EUR"));
        Shelf shelf = worked.value();
        assertThat(shelf.lasts().s() / WEEK).isCloseTo(2 / (8.5 / 52), within(1e-9));
        assertThat(shelf.risk()).isCloseTo(0.0864, within(5e-5));
        assertThat(shelf.order()).isEqualTo(1);
        assertThat(Objects.requireNonNull(shelf.price()).amount()).isCloseTo(20, within(1e-9));
        WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
    }

    /** Against the library's negative binomial law, which asks for whole numbers: half a tap more on either side. */
    @Test
    void theChanceLiesBetweenThoseOfTheNextWholeCounts() {
        for (int onHand = 0; onHand < 8; onHand++) {
            double chance = Shelf.of(new Stocked(onHand, 8, 0), weeks(52, 6, 0), 1e-9, null)
                    .value()
                    .risk();
            double fewer = 1 - new PascalDistribution(8, 52.0 / 58).cumulativeProbability(onHand);
            double more = 1 - new PascalDistribution(9, 52.0 / 58).cumulativeProbability(onHand);
            assertThat(chance).isBetween(fewer, more);
        }
    }

    @Test
    void theOrderIsTheFewestThatBringTheRiskDown() {
        for (int onHand = 0; onHand < 6; onHand++) {
            int order = Shelf.of(new Stocked(onHand, 12, 0), weeks(52, 3, 4), 0.05, null)
                    .value()
                    .order();
            assertThat(risk(onHand + order)).isLessThanOrEqualTo(0.05);
            if (order > 0) {
                assertThat(risk(onHand + order - 1)).isGreaterThan(0.05);
            }
        }
    }

    @Test
    void moreOnTheShelfLowersTheRiskAndALongerWaitRaisesIt() {
        double before = 1;
        for (int onHand = 0; onHand < 30; onHand++) {
            double risk = risk(onHand);
            assertThat(risk).isLessThan(before);
            before = risk;
        }
        double longer = 0;
        for (int wait = 1; wait < 30; wait++) {
            double risk = Shelf.of(new Stocked(2, 12, 0), weeks(52, wait, 0), 0.05, null)
                    .value()
                    .risk();
            assertThat(risk).isGreaterThan(longer);
            longer = risk;
        }
    }

    @Test
    void tapsOnTheirWayCountAsOnTheShelf() {
        assertThat(Shelf.of(new Stocked(1, 12, 3), weeks(52, 3, 4), 0.05, null)
                        .value()
                        .order())
                .isEqualTo(Shelf.of(new Stocked(4, 12, 0), weeks(52, 3, 4), 0.05, null)
                        .value()
                        .order());
    }

    @Test
    void withNoneUsedUpItIsSaidHowLittleIsKnown() {
        assertThat(Shelf.of(new Stocked(1, 0, 0), weeks(52, 3, 4), 0.05, null)
                        .value()
                        .cautions())
                .extracting(Caution::code)
                .containsExactly("fewRecords");
        assertThatThrownBy(() -> Shelf.of(new Stocked(1, 0, 0), weeks(52, 3, 4), 0, null))
                .hasMessage("risk: \"0.0\" must be between 0 and 1."
                        + " To mend: give the chance of a missing tap that you bear.");
    }

    private static double risk(int onHand) {
        return Shelf.of(new Stocked(onHand, 12, 0), weeks(52, 3, 4), 0.05, null)
                .value()
                .risk();
    }

    private static Spans weeks(double record, double delivery, double until) {
        return new Spans(
                TimeSpan.ofSeconds(record * WEEK),
                TimeSpan.ofSeconds(delivery * WEEK),
                TimeSpan.ofSeconds(until * WEEK));
    }
}
