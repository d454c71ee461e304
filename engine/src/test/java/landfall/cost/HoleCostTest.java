// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import landfall.material.Materials;
import landfall.quantity.Money;
import landfall.thread.callout.CallOuts;
import landfall.wear.Prior;
import landfall.wear.WearLaw;
import landfall.working.Worked;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.Test;

class HoleCostTest {
    private static final WearLaw LAW = WearLaw.of(
            List.of(),
            Prior.practice(
                    CallOuts.read("M8x1.25-6H").orThrow().thread(),
                    Materials.find("material", "C45").orThrow()));

    private static Worked<HoleCost> cost(double tap, double spoilt) {
        return HoleCost.of(LAW, new Bench(new Money(tap, "EUR"), new Money(4, "EUR"), new Money(spoilt, "EUR")), 5);
    }

    /** The same formula as the curve of wear limits has, at the usual limit. */
    @Test
    void atTheUsualLimitItIsThatPointOfTheCurve() {
        Bench bench = new Bench(new Money(18, "EUR"), new Money(4, "EUR"), new Money(40, "EUR"));
        LimitPoint usual = LimitChoice.of(LAW, bench, limit -> 5).curve().stream()
                .filter(point -> Math.abs(
                                point.limit().mm() - LAW.prior().subject().due().mm())
                        < 1e-9)
                .findFirst()
                .orElseThrow();
        assertThat(cost(18, 40).value().perHole().expected())
                .isCloseTo(usual.perHole().amount(), within(1e-12));
    }

    @Test
    void aDearerTapAndADearerPartCostMore() {
        assertThat(cost(36, 40).value().perHole().expected())
                .isGreaterThan(cost(18, 40).value().perHole().expected());
        assertThat(cost(18, 400).value().perHole().high())
                .isGreaterThan(cost(18, 40).value().perHole().high());
    }

    @Test
    void everyFormulaGivesItsFigure() {
        WorkingCheck.everyFormulaGivesItsFigure(cost(18, 40).steps());
    }
}
