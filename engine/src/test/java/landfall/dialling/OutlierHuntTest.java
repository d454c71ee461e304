// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import static java.util.Objects.requireNonNull;
import static landfall.dialling.KnownTap.even;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import landfall.grind.CamProfile;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Readings that the others do not bear out")
class OutlierHuntTest {
    private static final CamProfile STRAIGHT = CamProfile.straight();
    private static final KnownTap TAP = new KnownTap(0, -0.5, 0.01, -0.02, new double[] {0.003, 0.001, -0.004});

    @Test
    void aSlipOfTwoFiguresIsNamedByLandAndAngleAndStaysInTheFit() {
        Readings sound = TAP.read(even(40, 5), 0.001, 0.001, new Random(1));
        Readings slipped = slip(sound, 7, 0.05);
        Solution all = Fits.fullest(slipped, STRAIGHT);
        OutlierHunt hunt = OutlierHunt.of(slipped, STRAIGHT, all);
        assertThat(hunt.outliers()).hasSize(1);
        assertThat(hunt.outliers().get(0).reading().name()).isEqualTo("land 2 at 20 deg");
        assertThat(Math.abs(hunt.outliers().get(0).studentised()))
                .isGreaterThan(hunt.outliers().get(0).limit());
        assertThat(all.residuals).hasSize(15);
        Solution without = requireNonNull(hunt.without());
        assertThat(without.residuals).hasSize(14);
        assertThat(without.value(without.model.slope())).isEqualTo(-0.5, within(0.005));
        assertThat(without.spread.sigma()).isLessThan(all.spread.sigma() / 5);
    }

    @Test
    void twoSlipsAreBothFound() {
        Readings slipped = slip(slip(TAP.read(even(40, 6), 0.001, 0.001, new Random(2)), 3, 0.08), 14, -0.06);
        assertThat(OutlierHunt.of(slipped, STRAIGHT, Fits.fullest(slipped, STRAIGHT))
                        .outliers())
                .extracting(outlier -> outlier.reading().name())
                .containsExactlyInAnyOrder("land 1 at 24 deg", "land 3 at 16 deg");
    }

    @ParameterizedTest(name = "dial {0}, shake {1}")
    @CsvSource({"0.001, 0.003", "0.01, 0.004", "0.01, 0.0001"})
    void aSoundSetIsSuspectedNoMoreThanOnceInTwenty(double division, double shake) {
        Random random = new Random(4);
        int suspected = 0;
        for (int trial = 0; trial < 4000; trial++) {
            KnownTap tap = TAP.runningOut(0.05 * random.nextDouble(), 0.05 * random.nextDouble());
            Readings readings = tap.read(even(40, 5), division, shake, random);
            suspected += OutlierHunt.of(readings, STRAIGHT, Fits.fullest(readings, STRAIGHT))
                            .outliers()
                            .isEmpty()
                    ? 0
                    : 1;
        }
        assertThat(100.0 * suspected / 4000).isLessThan(6);
    }

    @Test
    void aReadingOnWhichALandHangsAloneIsNotJudged() {
        Readings full = KnownTap.even(4, -0.5, 0.01, 0).read(even(40, 5), 0.001, 0.001, new Random(5));
        List<Reading> list =
                new ArrayList<>(full.list().stream().filter(r -> r.land() < 4).toList());
        list.add(KnownTap.reading(4, 0, 9.9, full.place()));
        Readings lonely = new Readings(list, full.resolution(), 4);
        Solution solution = requireNonNull(Fits.orNull(lonely, STRAIGHT, Terms.HEIGHTS));
        assertThat(OutlierHunt.of(lonely, STRAIGHT, solution).outliers()).isEmpty();
    }

    private static Readings slip(Readings readings, int at, double by) {
        List<Reading> list = new ArrayList<>(readings.list());
        Reading old = list.get(at);
        list.set(at, new Reading(old.land(), old.angle(), old.value().plus(Length.ofMm(by)), old.place()));
        return new Readings(list, readings.resolution(), readings.flutes());
    }
}
