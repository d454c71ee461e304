// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import landfall.grind.CamProfile;
import landfall.grind.Place;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The example of docs/methods/dialling.md, worked by hand")
class ByHandTest {
    private static final double[] DEGREES = {0, 20, 40};
    private static final double[][] READ = {
        {0.00, -0.17, -0.34},
        {-0.04, -0.21, -0.37},
        {-0.02, -0.18, -0.34}
    };
    private static final DialFindings FOUND = Dialling.of(
                    new DialAsk(readings(), CamProfile.straight(), DiallingTest.M10, Beside.NOTHING))
            .value();

    @Test
    void hasTheSlopeOfTheMeansOverTheLands() {
        double slope = (-0.35 + 0.02) / Math.toRadians(40);
        assertThat(FOUND.slope().value().mm()).isEqualTo(slope, within(1e-12)).isEqualTo(-0.4727, within(5e-5));
        assertThat(FOUND.slope().uncertainty().mm()).isEqualTo(0.0066, within(5e-5));
    }

    @Test
    void hasTheRunOutOfTheSumsWhenAllLandsAreOfOneHeight() {
        DialFit common = requireNonNull(FOUND.fits().commonZero());
        RunOut runOut = requireNonNull(common.runOut());
        assertThat(runOut.cosine().value().mm()).isEqualTo(0.0201, within(5e-5));
        assertThat(runOut.sine().value().mm()).isEqualTo(-0.0097, within(5e-5));
        assertThat(runOut.eccentricity().value().mm()).isEqualTo(0.0223, within(5e-5));
        assertThat(requireNonNull(runOut.direction()).value().deg()).isEqualTo(334.4, within(0.05));
        assertThat(common.spread().mm()).isEqualTo(0.0029, within(5e-5));
    }

    @Test
    void hasTheReliefThatTheCalculatorGives() {
        ReliefFound relief = requireNonNull(FOUND.relief());
        assertThat(relief.ground().deg()).isEqualTo(5.87, within(5e-3));
        assertThat(relief.working().value().deg()).isEqualTo(5.40, within(5e-3));
        assertThat(relief.verdict()).isEqualTo(ReliefFound.Verdict.SOUND);
    }

    @Test
    void tellsTheRunOutFourTimesWiderWhenHeightsAreFittedToo() {
        double wide =
                requireNonNull(FOUND.fits().main().runOut()).cosine().standard().mm();
        DialFit common = requireNonNull(FOUND.fits().commonZero());
        double narrow = requireNonNull(common.runOut()).cosine().standard().mm();
        assertThat(wide / narrow).isBetween(3.5, 4.5);
    }

    private static Readings readings() {
        List<Reading> list = new ArrayList<>();
        for (int land = 1; land <= 3; land++) {
            for (int i = 0; i < 3; i++) {
                list.add(KnownTap.reading(land, DEGREES[i], READ[land - 1][i], Place.CHAMFER_STILL));
            }
        }
        return new Readings(list, Length.ofMm(0.01), 3);
    }
}
