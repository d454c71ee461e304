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
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Where the rise begins")
class PhaseTest {
    private static final CamProfile STRAIGHT = CamProfile.straight();

    @ParameterizedTest
    @ValueSource(doubles = {-6, -2.5, 0, 4, 11})
    void isTheAngleThatTheReadingsWereMadeFrom(double start) {
        Phase phase = requireNonNull(phase(readings(start, 1e-5, 0, new Random(1))));
        assertThat(phase.start().value().deg()).isEqualTo(start, within(0.01));
        assertThat(phase.slope().value().mm()).isEqualTo(0.6, within(1e-3));
    }

    @Test
    void liesInsideItsUncertaintyNineteenTimesInTwenty() {
        Random random = new Random(2);
        int covered = 0;
        for (int trial = 0; trial < 300; trial++) {
            double start = -6 + 12 * random.nextDouble();
            Phase phase = requireNonNull(phase(readings(start, 0.001, 0.002, random)));
            covered += Math.abs(phase.start().value().deg() - start)
                            <= phase.start().uncertainty().deg()
                    ? 1
                    : 0;
        }
        assertThat(100.0 * covered / 300).isBetween(92.0, 98.0);
    }

    @Test
    void isNotToldFromReadingsOnTheRiseAlone() {
        Random random = new Random(3);
        int told = 0;
        for (int trial = 0; trial < 300; trial++) {
            Readings readings = KnownTap.even(3, 0.6, 0.01, 0.02).read(even(40, 6), 0.001, 0.002, random);
            told += phase(readings) == null ? 0 : 1;
        }
        assertThat(told).isLessThan(15);
    }

    @Test
    void isToldWhereAllLandsWereReadAtTheEdgeWithTheZeroFixedThere() {
        Phase phase = requireNonNull(phase(dwelling(3.5, new double[] {0, 8, 16, 24, 32, 40}, 1e-5, 0, new Random(4))));
        assertThat(phase.start().value().deg()).isEqualTo(3.5, within(0.02));
    }

    @Test
    void takesThreeAngles() {
        assertThat(phase(dwelling(0, new double[] {-10, 20}, 0.001, 0, new Random(5))))
                .isNull();
    }

    private static @Nullable Phase phase(Readings readings) {
        return Phase.of(readings, STRAIGHT, Fits.fullest(readings, STRAIGHT));
    }

    private static Readings readings(double start, double division, double shake, Random random) {
        return dwelling(start, new double[] {-20, -14, -8, 0, 6, 12, 20, 28, 36, 44}, division, shake, random);
    }

    private static Readings dwelling(double start, double[] degrees, double division, double shake, Random random) {
        List<Reading> list = new ArrayList<>();
        KnownTap runsOut = KnownTap.even(4, 0, 0.01, -0.005);
        for (int land = 1; land <= 4; land++) {
            for (double deg : degrees) {
                double rise = 0.6 * Math.toRadians(Math.max(0, deg - start));
                double read = runsOut.at(land, deg) + rise + shake * random.nextGaussian();
                list.add(new Reading(
                        land, Angle.ofDeg(deg), Length.ofMm(Math.rint(read / division) * division), Place.SHANK));
            }
        }
        return new Readings(list, Length.ofMm(division), 4);
    }
}
