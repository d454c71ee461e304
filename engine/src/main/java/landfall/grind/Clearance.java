// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Length;
import landfall.tap.Chamfer;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * Room along the axis: how wide the wheel must be, and how far it may stand over the point before it meets a centre.
 *
 * <p>The wheel's face lies along the chamfer line. Beyond the large end that line stands outside the thread, so the far
 * corner clears the full threads; ahead of the point it runs in towards the axis, and an axial rise drives a centre at
 * it by that rise.
 *
 * @param leastWidth of the wheel's face to cover the chamfer through the whole axial rise
 * @param overPoint how far the face may stand ahead of the point over a centre of half the point's diameter; none left
 *     when it is negative
 */
public record Clearance(Length leastWidth, Length overPoint) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/cam-and-gap.md");
    public static final Rule WIDTH = new Rule(
            "w_face",
            "(n_c*P + a)/cos(κ_s)",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "least width of the wheel's face, to cover the chamfer through the axial rise");
    public static final Rule OVER_POINT = new Rule(
            "x_c",
            "d_p/(4*tan(κ_s)) - a",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "how far the face may stand ahead of the point over a centre of half the point's diameter");

    static Clearance of(Chamfer chamfer, Length pitch, Setting setting, Pen pen) {
        double swivel = setting.swivel().rad();
        double a = setting.rises().axial().mm();
        double width = pen.write(WIDTH, (chamfer.threads() * pitch.mm() + a) / Math.cos(swivel));
        double over = pen.write(OVER_POINT, chamfer.pointDiameter().mm() / (4 * Math.tan(swivel)) - a);
        return new Clearance(Length.ofMm(width), Length.ofMm(over));
    }
}
