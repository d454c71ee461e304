// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import landfall.quantity.Length;
import landfall.thread.Family;
import landfall.thread.Hand;
import landfall.thread.Lead;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("An odd-fluted tap in a V-anvil")
class VAnvilTest {
    private static final ScrewThread M10 =
            new ScrewThread(Family.METRIC, Profile.ISO_60, Length.ofMm(10), new Lead(Length.ofMm(1.5), 1), Hand.RIGHT);
    private static final Length WIRE = Length.ofMm(0.866);

    private static VAnvil of(int flutes, double reading, double crest, boolean height) {
        return VAnvil.of(
                M10,
                new GaugeWish.InVAnvil(flutes, new VAnvil.Reading(Length.ofMm(reading), height), Length.ofMm(crest)),
                WIRE,
                Pen.NONE);
    }

    /** Angles and factors computed from the geometry; 60 and 108 deg are also what micrometer makers state. */
    @Test
    void anglesAndFactorsAreThoseOfTheV() {
        assertThat(of(3, 10, 10, false).angle().deg()).isCloseTo(60, within(1e-9));
        assertThat(of(5, 10, 10, false).angle().deg()).isCloseTo(108, within(1e-9));
        assertThat(of(7, 10, 10, false).angle().deg()).isCloseTo(128.571, within(5e-4));
        assertThat(of(3, 10, 10, false).factor()).isCloseTo(1.5, within(1e-12));
        assertThat(of(5, 10, 10, false).factor()).isCloseTo(1.118034, within(5e-7));
        assertThat(of(7, 10, 10, false).factor()).isCloseTo(1.054958, within(5e-7));
    }

    /** 3 flutes: E = 3 R − 2 d − 3 W + 0.866025 P; 5 flutes: 2.236068 R − 1.236068 d − .. */
    @Test
    void agreesWithTheFormsOfThreeAndFiveFlutes() {
        double a1 = 3 * 0.866 - 0.8660254 * 1.5;
        assertThat(of(3, 10.2, 10.05, false).pitchDiameter().mm()).isCloseTo(3 * 10.2 - 2 * 10.05 - a1, within(1e-6));
        assertThat(of(5, 10.2, 10.05, false).pitchDiameter().mm())
                .isCloseTo(2.236068 * 10.2 - 1.236068 * 10.05 - a1, within(2e-5));
    }

    /**
     * Drawn, not calculated by the formula: circles of the crests against the V's faces, a wire on the far side of the
     * pitch diameter. The height above the apex must be the one that gives the pitch diameter back.
     */
    @Test
    void theDrawnHeightGivesThePitchDiameterBack() {
        double crest = 10.03;
        double E = 9.07;
        for (int flutes : new int[] {3, 5, 7, 9}) {
            double halfV = Math.toRadians(180 - 360.0 / flutes) / 2;
            double axisAboveApex = crest / 2 / Math.sin(halfV);
            double wireTop = axisAboveApex + (E + 0.866 * 3 - Math.sqrt(3) / 2 * 1.5) / 2;
            assertThat(of(flutes, wireTop, crest, true).pitchDiameter().mm()).isCloseTo(E, within(1e-9));
        }
    }

    @Test
    void aHeightIsTheReadingTimesTheFactor() {
        assertThat(of(3, 15.3, 10.05, true).pitchDiameter().mm())
                .isCloseTo(of(3, 10.2, 10.05, false).pitchDiameter().mm(), within(1e-9));
    }

    @Test
    void anEvenNumberOfFlutesIsRefusedWithTheMend() {
        assertThatThrownBy(() -> of(4, 10, 10, false))
                .hasMessage("flutes: \"4\" must be an odd number from 3. To mend: measure a tap with an even number"
                        + " of flutes"
                        + " with a plain micrometer and three wires.");
    }
}
