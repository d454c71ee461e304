// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import static java.util.Objects.requireNonNull;
import static landfall.dialling.KnownTap.even;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import landfall.grind.CamProfile;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The fit drawn out beside the readings")
class FitCourseTest {
    private static final KnownTap UNEVEN = new KnownTap(0.02, -0.4, 0.012, -0.007, new double[] {0.02, -0.005, -0.015});

    private static FitCourse course(Readings readings, Beside beside) {
        return Dialling.of(new DialAsk(readings, CamProfile.straight(), DiallingTest.M10, beside))
                .value()
                .course();
    }

    /** On the crests nothing but a fixture tells what the dial should read. */
    @Test
    void readingsWithoutScatterLieOnIt() {
        FitCourse course = course(UNEVEN.exact(Place.CREST, even(40, 5), 0.001), Beside.NOTHING);
        assertThat(course.readings())
                .hasSize(15)
                .allSatisfy(at -> assertThat(at.left().mm()).isEqualTo(0, within(1e-9)));
        for (FitCourse.OfLand land : course.lands()) {
            for (FitCourse.Point point : land.points()) {
                assertThat(point.fitted().mm())
                        .isEqualTo(UNEVEN.at(land.land(), point.land().deg()), within(1e-9));
                assertThat(point.wanted()).isNull();
            }
        }
    }

    /** The constant of the known tap: run-out and heights sum to nothing over the three edges. */
    @Test
    void wantsEveryEdgeAtTheMeanOfTheEdgesAndTheWantedSlopeFromThere() {
        FitCourse course = course(UNEVEN.exact(even(40, 5), 0.001), new Beside(null, null, DiallingTest.RADIAL));
        assertThat(course.zero().mm()).isEqualTo(0.02, within(1e-9));
        double slope = -DiallingTest.RADIAL.squareFall(DiallingTest.M10.chamfer());
        for (FitCourse.At at : course.readings()) {
            assertThat(requireNonNull(at.wanted()).mm())
                    .isEqualTo(0.02 + slope * at.reading().angle().rad(), within(1e-9));
        }
    }

    @Test
    void leavesOverWhatTheHandShook() {
        FitCourse course = course(UNEVEN.read(even(40, 5), 0.001, 0.004, new Random(7)), Beside.NOTHING);
        double sum =
                course.readings().stream().mapToDouble(at -> at.left().mm()).sum();
        assertThat(sum).isEqualTo(0, within(1e-9));
        assertThat(course.readings())
                .anySatisfy(at -> assertThat(Math.abs(at.left().mm())).isGreaterThan(0.002));
    }

    @Test
    void aLandThatWasNotReadIsNotDrawn() {
        Readings two = new Readings(
                UNEVEN.exact(even(40, 5), 0.001).list().stream()
                        .filter(reading -> reading.land() != 2)
                        .toList(),
                Length.ofMm(0.001),
                3);
        assertThat(course(two, Beside.NOTHING).lands())
                .extracting(FitCourse.OfLand::land)
                .containsExactly(1, 3);
        assertThat(course(two, Beside.NOTHING).lands().get(0).points().get(0).land())
                .isEqualTo(Angle.ZERO);
    }
}
