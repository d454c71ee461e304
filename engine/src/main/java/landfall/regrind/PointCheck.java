// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import landfall.quantity.Length;
import landfall.quantity.Measured;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * The point's diameter after a regrind: as it was where the end was ground back with the chamfer, less by {@code 2 s_g
 * tan κ} where it was left alone; to what the length rule allows, P/5 of chamfer being {@code 0.4 P tan κ} of diameter.
 */
final class PointCheck {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/regrind.md");
    static final Rule BACK = Rule.given("s_p", "mm", "chamfer ground back");
    static final Rule POINT = Rule.given("d_p", "mm", "diameter at the point before");
    static final Rule PITCH = Rule.given("P", "mm", "pitch");
    static final Rule CHAMFER = Rule.given("κ", "deg", "chamfer angle to the axis");
    static final Rule LEAST = new Rule(
            "d_p_lo",
            "d_p - 2*s_p*tan(κ) - 0.4*P*tan(κ)",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "least diameter at the point, the end left alone");
    static final Rule MOST = new Rule(
            "d_p_hi",
            "d_p + 0.4*P*tan(κ)",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "greatest diameter at the point, the end ground back");

    private PointCheck() {}

    static Check of(Tap tap, Length groundBack, @Nullable Measured found, Pen pen) {
        double s_p = pen.write(BACK, groundBack.mm());
        double d_p = pen.write(POINT, tap.chamfer().pointDiameter().mm());
        double P = pen.write(PITCH, tap.thread().pitch().mm());
        double tangent =
                Math.tan(Math.toRadians(pen.write(CHAMFER, tap.chamfer().angle().deg())));
        double least = pen.write(LEAST, d_p - 2 * s_p * tangent - 0.4 * P * tangent);
        double most = pen.write(MOST, d_p + 0.4 * P * tangent);
        String with = "diameter at the point, across the lands; odd flutes in a V-anvil";
        String rule = "from %s (end left alone) to %s (end ground back)"
                .formatted(Length.ofMm(least).words(), Length.ofMm(most).words());
        if (found == null) {
            return new Check("pointDiameter", with, rule, "", null);
        }
        Verdict verdict = Verdict.within(found, least, most);
        return new Check("pointDiameter", with, rule, found.value().words(), verdict);
    }
}
