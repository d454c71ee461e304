// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.sheets.grind.FluteOutline.Point;
import landfall.sheets.grind.TapShape.FluteShape;
import org.junit.jupiter.api.Test;

class FluteOutlineTest {
    private static final FluteShape RAKED = new FluteShape(Length.ofMm(3.5), Length.ofMm(2.1), Angle.ofDeg(10));

    private static List<Point> raked() {
        return new FluteOutline(4, 82.76, RAKED).outline().orElseThrow();
    }

    @Test
    void runsFromTheEdgeToTheHeelOnTheMajorDiameter() {
        List<Point> points = raked();
        Point edge = points.get(0);
        Point heel = points.get(points.size() - 1);
        assertThat(edge.x()).isCloseTo(0, within(1e-9));
        assertThat(edge.y()).isCloseTo(4, within(1e-9));
        assertThat(heel.radius()).isCloseTo(4, within(1e-9));
        assertThat(Math.toDegrees(Math.atan2(-heel.x(), heel.y()))).isCloseTo(82.76, within(1e-9));
    }

    /** The floor touches the core circle and nothing goes deeper. */
    @Test
    void itsFloorTouchesTheCore() {
        double deepest = raked().stream().mapToDouble(Point::radius).min().orElseThrow();
        assertThat(deepest).isCloseTo(1.75, within(0.003));
        assertThat(deepest).isGreaterThanOrEqualTo(1.75 - 1e-9);
    }

    /** Positive rake: going inwards the face lies behind the radius through the edge, that is to the right. */
    @Test
    void theFaceStandsAtItsRake() {
        List<Point> points = raked();
        Point edge = points.get(0);
        Point in = points.get(1);
        assertThat(Math.toDegrees(Math.atan2(in.x() - edge.x(), edge.y() - in.y())))
                .isCloseTo(10, within(1e-9));
    }

    @Test
    void theLastStraightIsTangentToTheFloor() {
        List<Point> points = raked();
        int n = points.size();
        double arc = direction(points.get(n - 3), points.get(n - 2));
        double straight = direction(points.get(n - 2), points.get(n - 1));
        assertThat(Math.IEEEremainder(straight - arc, 360)).isBetween(-5.0, 5.0);
    }

    @Test
    void withoutRakeItIsOneArcThroughEdgeAndHeel() {
        FluteShape round = new FluteShape(Length.ofMm(2), Length.ofMm(2.1), null);
        double half = Math.toDegrees(Math.acos((9 + 3.1 * 3.1 - 2.1 * 2.1) / (2 * 3 * 3.1)));
        List<Point> points = new FluteOutline(3, 2 * half, round).outline().orElseThrow();
        Point centre = Point.polar(3.1, half);
        for (Point point : points) {
            assertThat(Math.hypot(point.x() - centre.x(), point.y() - centre.y()))
                    .isCloseTo(2.1, within(1e-9));
        }
        assertThat(points.stream().mapToDouble(Point::radius).min().orElseThrow())
                .isCloseTo(1.0, within(0.003));
    }

    @Test
    void whatDoesNotCloseHasNoOutline() {
        FluteShape tooLarge = new FluteShape(Length.ofMm(3.5), Length.ofMm(20), Angle.ofDeg(10));
        assertThat(new FluteOutline(4, 82.76, tooLarge).outline()).isEmpty();
    }

    private static double direction(Point from, Point to) {
        return Math.toDegrees(Math.atan2(to.y() - from.y(), to.x() - from.x()));
    }
}
