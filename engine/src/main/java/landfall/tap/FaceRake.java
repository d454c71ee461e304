// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * Rake of the face at the basic major diameter: as it was measured, or of a flute of one arc by its form.
 *
 * <p>The arc of radius r_f about a centre c_f from the axis crosses the major circle at the edge; there its tangent
 * leans from the radial line by {@code asin((R² + r_f² - c_f²)/(2 R r_f))}, positive where the face recedes below the
 * edge. It is the tangential rake of a hook: deeper down the face it falls.
 */
public final class FaceRake {
    static final Rule GIVEN = Rule.given("γ_0", "deg", "rake of the face");
    static final Rule BY_ARC = new Rule(
            "γ_0",
            "asin((d^2/4 + r_f^2 - c_f^2)/(d*r_f))",
            "deg",
            Land.GEOMETRY,
            Trust.DERIVED,
            "rake of the face at the edge, as the one arc of the flute leaves it");

    private FaceRake() {}

    /** The rake; null where neither it nor the arc of the flute is told. */
    public static @Nullable Angle of(Tap tap, Pen pen) {
        FluteForm form = tap.flutes().form();
        Angle rake = form.rake();
        if (rake != null) {
            return Angle.ofDeg(pen.write(GIVEN, rake.deg()));
        }
        Length core = form.core();
        Length radius = form.radius();
        if (core == null || radius == null) {
            return null;
        }
        double d = pen.write(Land.MAJOR, tap.thread().major().mm());
        double d_core = pen.write(Land.CORE, core.mm());
        double r_f = pen.write(Land.FLUTE_RADIUS, radius.mm());
        double c_f = pen.write(Land.FLUTE_CENTRE, d_core / 2 + r_f);
        double sine = (d * d / 4 + r_f * r_f - c_f * c_f) / (d * r_f);
        // an arc that does not cross the major circle leaves no edge; the tap's own check refuses it where it sets the
        // land
        return Math.abs(sine) < 1 ? Angle.ofDeg(pen.write(BY_ARC, Math.toDegrees(Math.asin(sine)))) : null;
    }

    /** Whether the rake is not as measured but by the arc of the flute. */
    public static boolean isByArc(Tap tap) {
        return tap.flutes().form().rake() == null && of(tap, Pen.NONE) != null;
    }
}
