// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.thread.CallOut;
import landfall.thread.callout.CallOuts;
import landfall.working.Pen;
import landfall.working.Recorded;
import landfall.working.WorkingCheck;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Rake of the face")
class FaceRakeTest {
    private static Tap tap(double core, double radius, @Nullable Double rake) {
        CallOut callOut = CallOuts.read("M10x1.5-6H").orThrow();
        FluteForm form = new FluteForm(Length.ofMm(core), Length.ofMm(radius), rake == null ? null : Angle.ofDeg(rake));
        Flutes flutes = new Flutes(3, FluteKind.STRAIGHT, form, Angle.ZERO);
        Land land = rake == null ? new Land.LeftByFlute() : new Land.Span(Angle.ofDeg(40));
        ChamferGiven chamfer = new ChamferGiven(Angle.ofDeg(9), Length.ofMm(8.2), null);
        return new Tap(
                callOut,
                new Cutting(flutes, land, chamfer, ThreadRelief.NONE),
                Body.UNKNOWN,
                new PitchZone(null, Least.UNKNOWN),
                Make.PLAIN_HSS);
    }

    /** Walks a millionth of the arc inwards from the edge and takes the lean of that step from the radial line. */
    private static double walked(double core, double radius) {
        double R = 5;
        double c = core / 2 + radius;
        // flute's centre on the x axis; the edge where the arc crosses the major circle
        double x = (R * R + c * c - radius * radius) / (2 * c);
        double y = Math.sqrt(R * R - x * x);
        double at = Math.atan2(y, x - c);
        double step = 1e-6;
        double inX = c + radius * Math.cos(at + step);
        double inY = radius * Math.sin(at + step);
        double radially = ((x - inX) * x + (y - inY) * y) / R;
        double behind = (-(inX - x) * y + (inY - y) * x) / R;
        return Math.toDegrees(Math.atan2(behind, radially));
    }

    @ParameterizedTest(name = "core {0}, flute radius {1}")
    @CsvSource({"4.1, 2.6", "4.5, 2.0", "3.8, 3.2", "5.0, 3.5", "4.2, 2.3"})
    void isTheLeanOfTheArcAtTheEdge(double core, double radius) {
        assertThat(requireNonNull(FaceRake.of(tap(core, radius, null), Pen.NONE))
                        .deg())
                .isEqualTo(walked(core, radius), within(1e-4));
        assertThat(FaceRake.isByArc(tap(core, radius, null))).isTrue();
    }

    @Test
    void asMeasuredComesFirst() {
        assertThat(FaceRake.of(tap(4.1, 2.6, 10.0), Pen.NONE)).isEqualTo(Angle.ofDeg(10));
        assertThat(FaceRake.isByArc(tap(4.1, 2.6, 10.0))).isFalse();
    }

    @Test
    void itsFormulasGiveTheirFigures() {
        Recorded pen = new Recorded();
        FaceRake.of(tap(4.1, 2.6, null), pen);
        WorkingCheck.everyFormulaGivesItsFigure(pen.steps());
    }
}
