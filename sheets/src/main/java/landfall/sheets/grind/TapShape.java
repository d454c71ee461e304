// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import landfall.grind.GrindSetup;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.FluteForm;
import landfall.tap.Tap;
import landfall.thread.ScrewThread;
import org.jspecify.annotations.Nullable;

/**
 * The tap as far as its drawings need it.
 *
 * @param thread basic sizes and hand
 * @param chamfer point diameter and angle to the axis
 * @param flutes how many
 * @param land land angle at the basic major diameter
 * @param flute form of a flute; null when the card does not tell it
 */
public record TapShape(
        ScrewThread thread,
        Chamfer chamfer,
        int flutes,
        Angle land,
        @Nullable FluteShape flute) {
    /** The chamfer's angle to the axis and the diameter that it leaves at the point. */
    public record Chamfer(Length pointDiameter, Angle angle) {}

    /**
     * Core circle and floor radius; rake null when each flute is one arc, radius null when nobody measured it.
     *
     * @param core diameter of the circle that the flutes' floors touch
     * @param radius of the floor
     * @param rake of a straight face through the edge, or null
     */
    public record FluteShape(
            Length core, @Nullable Length radius, @Nullable Angle rake) {}

    static TapShape of(GrindSetup setup) {
        Tap tap = setup.tap();
        FluteForm form = tap.flutes().form();
        FluteShape flute = form.core() == null ? null : new FluteShape(form.core(), form.radius(), form.rake());
        Chamfer chamfer =
                new Chamfer(tap.chamfer().pointDiameter(), tap.chamfer().angle());
        return new TapShape(tap.thread(), chamfer, tap.flutes().count(), setup.land(), flute);
    }

    public Length majorRadius() {
        return thread.major().times(0.5);
    }

    public Length pointRadius() {
        return chamfer.pointDiameter().times(0.5);
    }

    /** Along the axis: (major - point diameter) / 2 over the tangent of the chamfer angle. */
    public Length chamferLength() {
        double height = majorRadius().mm() - pointRadius().mm();
        return Length.ofMm(height / Math.tan(chamfer.angle().rad()));
    }

    /** Mid-chamfer radius: (major + point diameter) / 4. */
    public Length middleRadius() {
        return majorRadius().plus(pointRadius()).times(0.5);
    }
}
