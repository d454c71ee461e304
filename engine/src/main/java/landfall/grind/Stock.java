// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * Metal to take off the chamfer to clean it up, and what that does to the tap.
 *
 * <p>A wear land lies along the cutting path, so the working relief counts, not the static one; the rake does not
 * matter. A chip is measured down the face.
 *
 * @param square infeed square to the chamfer line, to clean up, without allowance
 * @param axial the same as a move along the axis
 * @param radial the same as a move square to the axis
 * @param allowance axial, below the damage
 * @param after what the tap then measures
 */
public record Stock(Length square, Length axial, Length radial, Length allowance, After after) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/regrind-stock.md");
    private static final Source PRACTICE = Source.of("common-practice", "stock below a burnt or damaged skin");
    public static final Rule WEAR_SQUARE = new Rule(
            "c_w",
            "w_wear*sin(α_w)/cos(α_n)",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "infeed square to the chamfer that takes off the wear land");
    static final Rule CHIP = Rule.given("l_chip", "mm", "depth of the deepest chip, measured down the face");
    static final Rule RAKE = Rule.given("γ_0", "deg", "rake of the face");
    static final Rule CHIP_SQUARE = new Rule(
            "c_chip",
            "l_chip*cos(α_w + γ_0)/cos(α_n)",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "infeed square to the chamfer that takes off the chip");
    static final Rule SQUARE_WEAR =
            new Rule("c", "c_w", "mm", GEOMETRY, Trust.DERIVED, "infeed square to the chamfer, to clean up");
    static final Rule SQUARE_BOTH = new Rule(
            "c", "max(c_w, c_chip)", "mm", GEOMETRY, Trust.DERIVED, "infeed square to the chamfer, to clean up");
    public static final Rule AXIAL =
            new Rule("s", "c/sin(κ)", "mm", GEOMETRY, Trust.DERIVED, "the same as an axial move, to clean up");
    public static final Rule RADIAL =
            new Rule("b_s", "c/cos(κ)", "mm", GEOMETRY, Trust.DERIVED, "the same as a radial move, to clean up");
    public static final Rule ALLOWANCE =
            Rule.table("s_0", "mm", PRACTICE, Trust.PRACTICE, "allowance below the damage, axial");
    public static final Rule WHOLE_AXIAL =
            new Rule("s_all", "s + s_0", "mm", GEOMETRY, Trust.DERIVED, "whole move along the axis");
    public static final Rule POINT_AFTER = new Rule(
            "d_pa",
            "d_p - 2*s_all*tan(κ)",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "diameter at the point after grinding, if the end is left alone");
    static final Rule OVERALL = Rule.given("l_all", "mm", "overall length");
    public static final Rule OVERALL_AFTER = new Rule(
            "l_after",
            "l_all - s_all",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "overall length, if the end is ground first to keep the point diameter");
    public static final Rule CHAMFER_LENGTH =
            new Rule("l_c", "n_c*P", "mm", GEOMETRY, Trust.DERIVED, "length of the chamfer along the axis");

    private static final Length ALLOWANCE_METRIC = Length.ofMm(0.05);
    private static final Length ALLOWANCE_INCH = Length.ofInch(0.002);

    /**
     * The tap after grinding.
     *
     * @param wholeAxial stock and allowance together, along the axis
     * @param pointDiameter if the end is left alone
     * @param overallIfEndFirst overall length if the end is ground back first; null when the length is not told
     * @param endFirst whether grinding the end first is the better way
     */
    public record After(
            Length wholeAxial,
            Length pointDiameter,
            Length chamferLength,
            @Nullable Length overallIfEndFirst,
            boolean endFirst) {}

    /** Stock for the wear land and the chip of the wish, at a relief. */
    public static Stock of(Tap tap, Relief relief, GrindWish wish, Pen pen) {
        double sine = Math.sin(tap.chamfer().angle().rad());
        double cosine = Math.cos(tap.chamfer().angle().rad());
        double wear = wish.wearTaken().land(tap.thread(), pen).mm();
        double groundCosine = Math.cos(relief.ground().rad());
        double c_w = pen.write(WEAR_SQUARE, wear * Math.sin(relief.working().rad()) / groundCosine);
        Length chip = wish.chip();
        double c;
        if (chip == null) {
            c = pen.write(SQUARE_WEAR, c_w);
        } else {
            var rake = tap.flutes().form().rake();
            double l = pen.write(CHIP, chip.mm());
            double gamma = pen.write(RAKE, rake == null ? 0 : rake.deg());
            double c_chip =
                    pen.write(CHIP_SQUARE, l * Math.cos(relief.working().rad() + Math.toRadians(gamma)) / groundCosine);
            c = pen.write(SQUARE_BOTH, Math.max(c_w, c_chip));
        }
        double s = pen.write(AXIAL, c / sine);
        double b = pen.write(RADIAL, c / cosine);
        Length allowance = tap.thread().family().system() == UnitSystem.INCH ? ALLOWANCE_INCH : ALLOWANCE_METRIC;
        pen.write(ALLOWANCE, allowance.mm());
        return new Stock(
                Length.ofMm(c), Length.ofMm(s), Length.ofMm(b), allowance, after(tap, s + allowance.mm(), pen));
    }

    private static After after(Tap tap, double wholeMm, Pen pen) {
        var chamfer = tap.chamfer();
        double whole = pen.write(WHOLE_AXIAL, wholeMm);
        double point = pen.write(
                POINT_AFTER,
                chamfer.pointDiameter().mm()
                        - 2 * whole * Math.tan(chamfer.angle().rad()));
        double length = pen.write(
                CHAMFER_LENGTH, chamfer.threads() * tap.thread().pitch().mm());
        Length overall = tap.body().overallLength();
        Length ifEndFirst = null;
        if (overall != null) {
            pen.write(OVERALL, overall.mm());
            ifEndFirst = Length.ofMm(pen.write(OVERALL_AFTER, overall.mm() - whole));
        }
        Length core = tap.flutes().form().core();
        boolean endFirst =
                core != null ? point <= core.mm() : whole > tap.thread().pitch().mm();
        return new After(Length.ofMm(whole), Length.ofMm(point), Length.ofMm(length), ifEndFirst, endFirst);
    }
}
