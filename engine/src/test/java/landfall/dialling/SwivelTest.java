// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The swivel, from readings along the chamfer")
class SwivelTest {
    @Test
    void isLowByTheAngleThatTheReadingsRiseTowardsTheShank() {
        Swivel swivel = Swivel.of(along(0.5, 5, 1e-6, 0, new Random(1)));
        assertThat(swivel.low().value().deg()).isEqualTo(0.5, within(1e-4));
        assertThat(swivel.length().mm()).isEqualTo(6);
        assertThat(Swivel.of(along(-0.5, 5, 1e-6, 0, new Random(1)))
                        .low()
                        .value()
                        .deg())
                .isEqualTo(-0.5, within(1e-4));
    }

    @Test
    void liesInsideItsUncertaintyNineteenTimesInTwenty() {
        Random random = new Random(2);
        int covered = 0;
        for (int trial = 0; trial < 10_000; trial++) {
            double low = 2 * random.nextDouble() - 1;
            FittedAngle found = Swivel.of(along(low, 6, 0.001, 0.002, random)).low();
            covered +=
                    Math.abs(found.value().deg() - low) <= found.uncertainty().deg() ? 1 : 0;
        }
        assertThat(100.0 * covered / 10_000).isBetween(94.0, 96.5);
    }

    /** A quarter of a degree over 6 mm is .026 mm: a .01 dial tells it from two readings, a length of 1 mm does not. */
    @Test
    void isToldByTheLengthThatWasDialled() {
        assertThat(Swivel.of(new AlongChamfer(List.of(spot(0, 0), spot(6, 0.03)), Length.ofMm(0.01)))
                        .low()
                        .differsFromZero())
                .isTrue();
        assertThat(Swivel.of(new AlongChamfer(List.of(spot(0, 0), spot(1, 0)), Length.ofMm(0.01)))
                        .low()
                        .uncertainty()
                        .deg())
                .isGreaterThan(0.25);
    }

    @Test
    void onePlaceIsRefusedWithTheMend() {
        List<AlongChamfer.Spot> one = List.of(spot(2, 0), spot(2, 0.01));
        Length division = Length.ofMm(0.01);
        assertThatThrownBy(() -> new AlongChamfer(one, division))
                .hasMessage("readings along the chamfer: \"2 readings\" must be at two or more places, with the dial's"
                        + " division. To mend: read at the point end and at the large end of one edge.");
    }

    private static AlongChamfer along(double lowDeg, int count, double division, double shake, Random random) {
        List<AlongChamfer.Spot> list = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double at = 6.0 * i / (count - 1);
            double read = 0.37 + at * Math.tan(Math.toRadians(lowDeg)) + shake * random.nextGaussian();
            list.add(spot(at, Math.rint(read / division) * division));
        }
        return new AlongChamfer(list, Length.ofMm(division));
    }

    private static AlongChamfer.Spot spot(double along, double value) {
        return new AlongChamfer.Spot(Length.ofMm(along), Length.ofMm(value));
    }
}
