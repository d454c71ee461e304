// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import landfall.tap.Tap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * The outline of a flute held against what its figures mean, without the formulas it is made by: a straight face that
 * passes the axis at R·sin(rake), a floor that touches the core, an arc of the flute's radius, the heel where the land
 * before ends.
 */
@DisplayName("A flute's outline")
class FluteCurveTest {
    private static final int TAPS = 200;

    @Test
    void aRakedFaceHeelFloorAndArcAreThoseOfTheCard() {
        RandomTaps taps = new RandomTaps(77);
        int raked = 0;
        for (int i = 0; i < TAPS; i++) {
            Tap tap = taps.next();
            if (tap.flutes().form().rake() == null) {
                continue;
            }
            raked++;
            double core = Objects.requireNonNull(tap.flutes().form().core()).mm() / 2;
            double rho = Objects.requireNonNull(tap.flutes().form().radius()).mm();
            FluteCurve curve = FluteCurve.of(tap, core, rho);
            face(tap, curve);
            double division = 2 * Math.PI / tap.flutes().count();
            double R = tap.thread().major().mm() / 2;
            double[] heel = curve.at(curve.heel(R));
            assertThat(Math.hypot(heel[0], heel[1])).isCloseTo(R, within(1e-9));
            double back = Math.atan2(-heel[1], heel[0]);
            assertThat(back < 0 ? back + 2 * Math.PI : back)
                    .isCloseTo(division - tap.landAngle().rad(), within(1e-6));
            double[] floor = curve.at(curve.floor());
            assertThat(Math.hypot(floor[0], floor[1])).isCloseTo(core, within(1e-9));
            assertThat(circle(floor, curve.at(curve.floor() + 0.02), curve.at(curve.floor() + 0.01)))
                    .isCloseTo(rho, within(1e-3 * rho));
        }
        assertThat(raked).isGreaterThan(TAPS / 2);
    }

    /** The line through two places of the face passes the axis at R·sin(rake), falling back behind the edge. */
    private static void face(Tap tap, FluteCurve curve) {
        double R = tap.thread().major().mm() / 2;
        double rake = Objects.requireNonNull(tap.flutes().form().rake()).rad();
        double[] edge = curve.at(curve.face(R));
        double[] inner = curve.at(curve.face(0.999 * R));
        assertThat(edge[0]).isCloseTo(R, within(1e-9));
        assertThat(edge[1]).isCloseTo(0, within(1e-9));
        double length = Math.hypot(edge[0] - inner[0], edge[1] - inner[1]);
        double passes = (edge[0] * inner[1] - edge[1] * inner[0]) / length;
        assertThat(passes).isCloseTo(R * Math.sin(rake), within(1e-6 * R));
    }

    /** Radius of the circle through three places. */
    private static double circle(double[] a, double[] b, double[] c) {
        double ab = Math.hypot(a[0] - b[0], a[1] - b[1]);
        double bc = Math.hypot(b[0] - c[0], b[1] - c[1]);
        double ca = Math.hypot(c[0] - a[0], c[1] - a[1]);
        double twice = Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
        return ab * bc * ca / (2 * twice);
    }
}
