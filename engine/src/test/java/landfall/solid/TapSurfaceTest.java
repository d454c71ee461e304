// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import landfall.grind.Envelopes;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The surface of a tap, by hand (docs/methods/tap-body.md)")
class TapSurfaceTest {
    private static TapSurface m10() {
        var tap = Envelopes.m10(4, 40, 60, 15).tap();
        return new TapSurface(tap, 2, 24, new ChamferForm.Even(Length.ofMm(0.5)));
    }

    /** M10x1.5: 0.09375 + 0.4871·0.57735 = 0.375 mm, a quarter of the pitch. */
    @Test
    void atThePitchLineAToothIsHalfAPitchWide() {
        assertThat(m10().half(9.0257 / 2)).isCloseTo(0.375, within(1e-4));
    }

    /** 1.5·40/360 = 0.1667 mm. */
    @Test
    void aRowOfTheThreadClimbsFromEdgeToHeel() {
        TapSurface surface = m10();
        double climb = surface.height(3, 0, Math.toRadians(40)) - surface.height(3, 0, 0);
        assertThat(climb).isCloseTo(0.1667, within(1e-4));
    }

    @Test
    void theCrestOfAToothIsTheMajorDiameterAndBetweenTeethTheMinor() {
        TapSurface surface = m10();
        double z = surface.height(9 * surface.pitch, 0, 0);
        assertThat(surface.radius(0, 0, z)).isCloseTo(5, within(1e-12));
        assertThat(surface.radius(0, 0, z + surface.pitch / 2)).isCloseTo(8.3762 / 2, within(1e-4));
    }
}
