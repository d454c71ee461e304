// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import landfall.cost.Sittings.AtSwivel;
import landfall.cost.Sittings.Cam;
import landfall.cost.Sittings.DueTap;
import landfall.cost.Sittings.Times;
import landfall.quantity.Angle;
import landfall.quantity.TimeSpan;
import landfall.thread.Hand;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.Test;

class SittingsTest {
    private static final List<DueTap> DUE = List.of(
            tap("T1", 3, 9), tap("T2", 4, 9), tap("T3", 3, 23), tap("T4", 3, 9.1), tap("T5", 3, 8.95), left("T6", 9));

    @Test
    void tapsOfOneCamAreOneSittingAndGoBySwivel() {
        Sittings sittings = Sittings.of(DUE, Times.USUAL).value();
        assertThat(sittings.all()).hasSize(3);
        assertThat(sittings.all().get(0).cam()).isEqualTo(new Cam(3, Hand.RIGHT));
        assertThat(sittings.all().get(0).swivels())
                .containsExactly(
                        new AtSwivel(Angle.ofDeg(8.95), List.of("T5", "T1", "T4")),
                        new AtSwivel(Angle.ofDeg(23), List.of("T3")));
    }

    /** Three cams, four swivels, six taps: 3·30 + 10 + 6·4 = 124 min; one by one 6·34 = 204. */
    @Test
    void gatheringSavesSetUps() {
        var worked = Sittings.of(DUE, Times.USUAL);
        assertThat(worked.value().together().s() / 60).isCloseTo(124, within(1e-9));
        assertThat(worked.value().singly().s() / 60).isCloseTo(204, within(1e-9));
        WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
    }

    @Test
    void everyTapIsInOneSittingAndNoSittingSpansMoreThanASwivel() {
        Random chance = new Random(4);
        List<DueTap> many = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            many.add(tap("T" + i, 2 + chance.nextInt(4), 4 + chance.nextDouble() * 20));
        }
        Sittings sittings = Sittings.of(many, Times.USUAL).value();
        assertThat(sittings.all().stream()
                        .flatMap(one -> one.swivels().stream())
                        .flatMap(at -> at.marks().stream()))
                .containsExactlyInAnyOrderElementsOf(
                        many.stream().map(DueTap::mark).toList());
        assertThat(sittings.together().s()).isLessThan(sittings.singly().s());
        sittings.all()
                .forEach(one -> one.swivels()
                        .forEach(at -> assertThat(at.marks())
                                .allSatisfy(mark -> assertThat(many.stream()
                                                .filter(tap -> tap.mark().equals(mark))
                                                .findFirst()
                                                .orElseThrow()
                                                .swivel()
                                                .deg())
                                        .isBetween(
                                                at.swivel().deg(), at.swivel().deg() + 0.25))));
    }

    @Test
    void nothingDueTakesNoTime() {
        assertThat(Sittings.of(List.of(), Times.USUAL).value().together().s()).isZero();
    }

    @Test
    void aSwivelThatTakesLongerThanAWholeSetUpIsRefused() {
        assertThatThrownBy(
                        () -> new Times(TimeSpan.ofSeconds(60), TimeSpan.ofSeconds(120), TimeSpan.ofSeconds(60), true))
                .hasMessage("times: \"1.0, 2.0 and 1.0 min\" must be 0 or more, a whole set-up no shorter than another"
                        + " swivel. To mend: give the minutes for a set-up, for another swivel and for each tap.");
    }

    private static DueTap tap(String mark, int flutes, double swivel) {
        return new DueTap(mark, new Cam(flutes, Hand.RIGHT), Angle.ofDeg(swivel));
    }

    private static DueTap left(String mark, double swivel) {
        return new DueTap(mark, new Cam(3, Hand.LEFT), Angle.ofDeg(swivel));
    }
}
