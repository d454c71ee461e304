// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.sheets.grind.Profile.Corner;
import landfall.sheets.grind.TapShape.Chamfer;
import landfall.thread.Family;
import landfall.thread.Hand;
import landfall.thread.Lead;
import landfall.thread.ScrewThread;
import org.junit.jupiter.api.Test;

class ProfileTest {
    private static final ScrewThread M10 = new ScrewThread(
            Family.METRIC, landfall.thread.Profile.ISO_60, Length.ofMm(10), new Lead(Length.ofMm(1.5), 1), Hand.RIGHT);
    private static final TapShape TAP =
            new TapShape(M10, new Chamfer(Length.ofMm(8), Angle.ofDeg(9)), 4, Angle.ofDeg(40), null);

    private static final List<Corner> CORNERS = new Profile(TAP, 14).corners();

    @Test
    void neverStandsAboveTheChamferNorAboveTheMajorNorBelowTheMinor() {
        for (Corner corner : CORNERS) {
            double chamfer = 4 + corner.z() * Math.tan(Math.toRadians(9));
            assertThat(corner.r()).isLessThanOrEqualTo(Math.min(chamfer, 5) + 1e-9);
            assertThat(corner.r())
                    .isGreaterThanOrEqualTo(
                            Math.min(chamfer, M10.minorDiameter().mm() / 2) - 1e-9);
        }
    }

    /** ISO 68-1: crest flat P/8, depth 5/8 H, flanks at 30 degrees. */
    @Test
    void aFullThreadHasTheBasicProfile() {
        double crest = new Profile(TAP, 14).crestAt() + 1.5;
        List<Corner> full = CORNERS.stream()
                .filter(corner -> Math.abs(corner.z() - crest) < 0.74)
                .toList();
        assertThat(full).hasSize(4);
        assertThat(full.get(2).z() - full.get(1).z()).isCloseTo(1.5 / 8, within(1e-9));
        double depth = full.get(1).r() - full.get(0).r();
        assertThat(depth).isCloseTo(5.0 / 8 * Math.sqrt(3) / 2 * 1.5, within(1e-9));
        double run = full.get(1).z() - full.get(0).z();
        assertThat(Math.toDegrees(Math.atan(run / depth))).isCloseTo(30, within(1e-9));
    }

    @Test
    void theChamferMeetsTheMajorDiameterAtItsLength() {
        assertThat(TAP.chamferLength().mm()).isCloseTo(1 / Math.tan(Math.toRadians(9)), within(1e-9));
        assertThat(TAP.middleRadius().mm()).isEqualTo(4.5);
        assertThat(CORNERS.get(0).z()).isZero();
        assertThat(CORNERS.get(CORNERS.size() - 1).z()).isEqualTo(14);
    }
}
