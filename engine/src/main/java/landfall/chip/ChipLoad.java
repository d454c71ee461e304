// SPDX-License-Identifier: Apache-2.0
package landfall.chip;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Area;
import landfall.quantity.Length;
import landfall.tap.Chamfer;
import landfall.tap.Tap;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * The chips of a tap in a hole.
 *
 * @param steps thickness and spacing of the teeth
 * @param slices of one start's groove, tooth by tooth
 * @param totalArea cut at once by all teeth of all starts
 * @param shares of the flutes with the run-out or the heights asked about; empty when none were
 */
public record ChipLoad(Groove groove, Steps steps, List<Slice> slices, Area totalArea, List<FluteShare> shares) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/chip-slices.md");
    public static final Rule STARTS = Rule.given("k", "1", "starts");
    public static final Rule FLUTES = Rule.given("N", "1", "flutes");
    public static final Rule LEAD = derived("L", "k*P", "mm", "lead: advance in one turn");
    static final Rule ALL_TEETH = derived("n_e", "N", "1", "teeth of one groove in a turn");
    static final Rule EVERY_SECOND = derived("n_e", "N/2", "1", "teeth of one groove in a turn, every second gone");
    public static final Rule SPACING = derived("p_t", "L/n_e", "mm", "distance of teeth along one groove, axially");
    public static final Rule THICKNESS = derived("h", "p_t*sin(κ)", "mm", "chip thickness, square to the chamfer edge");
    public static final Rule RADIAL_STEP = derived("a_r", "p_t*tan(κ)", "mm", "radial step from tooth to tooth");
    public static final Rule TOTAL = derived("A_all", "k*A_1", "mm²", "area cut at once by all teeth of all starts");
    static final Rule SPAN = derived(
            "s_c",
            "t + (2*w_c + 2*t*tan(φ))/2*tan(κ)",
            "mm",
            "radial way of the chamfer from first touch to full depth");
    public static final Rule TEETH =
            derived("n_t", "floor(s_c/a_r + 0.999999999)", "1", "teeth that cut in one groove");

    /** A tooth is counted when it takes more than this share of a step: below it lies rounding. */
    private static final double NOTHING = 1e-9;

    /**
     * Thickness and spacing.
     *
     * @param spacing of teeth along one groove, axially
     * @param thickness square to the chamfer edge
     * @param radial step from tooth to tooth
     * @param chamfer angle of the chamfer to the axis
     */
    public record Steps(Length spacing, Length thickness, Length radial, Angle chamfer) {}

    public ChipLoad {
        slices = List.copyOf(slices);
        shares = List.copyOf(shares);
    }

    /** The chips of a tap in a hole; its chamfer angle κ is written first. */
    public static ChipLoad of(Tap tap, Length hole, Evenness evenness, Pen pen) {
        ScrewThread thread = tap.thread();
        Chamfer chamfer = tap.cutting().chamfer().resolve(thread, pen);
        Groove groove = Groove.of(tap, hole, pen);
        double k = pen.write(STARTS, thread.lead().starts());
        double N = pen.write(FLUTES, tap.flutes().count());
        double L = pen.write(LEAD, k * thread.pitch().mm());
        double n_e = tap.make().interrupted() ? pen.write(EVERY_SECOND, N / 2) : pen.write(ALL_TEETH, N);
        double p_t = pen.write(SPACING, L / n_e);
        double h = pen.write(THICKNESS, p_t * Math.sin(chamfer.angle().rad()));
        double a_r = pen.write(RADIAL_STEP, p_t * Math.tan(chamfer.angle().rad()));
        Steps steps = new Steps(Length.ofMm(p_t), Length.ofMm(h), Length.ofMm(a_r), chamfer.angle());
        double total = pen.write(TOTAL, k * groove.area().mm2());
        List<Slice> slices = slices(groove, thread, steps, pen);
        List<FluteShare> shares = shares(tap.flutes().count(), steps, evenness, pen);
        return new ChipLoad(groove, steps, slices, Area.ofMm2(total), shares);
    }

    private static List<FluteShare> shares(int flutes, Steps steps, Evenness evenness, Pen pen) {
        if (!evenness.isTold()) {
            return List.of();
        }
        List<FluteShare> shares = FluteShare.of(flutes, steps, evenness, pen);
        pen.write(FluteShare.thickest(flutes), thickest(shares, steps).mm());
        return shares;
    }

    private static Length thickest(List<FluteShare> shares, Steps steps) {
        double most = shares.stream().mapToDouble(FluteShare::percent).max().orElseThrow();
        return steps.thickness().times(shares.size() * most / 100);
    }

    /** Chip of the flute that takes most; that of all when they are alike. */
    public Length thickest() {
        return shares.isEmpty() ? steps.thickness() : thickest(shares, steps);
    }

    private static List<Slice> slices(Groove groove, ScrewThread thread, Steps steps, Pen pen) {
        double slope = Math.tan(steps.chamfer().rad());
        double R = thread.major().mm() / 2;
        double wide = groove.holeWidth().mm();
        double span = pen.write(SPAN, groove.depth().mm() + (groove.crestWidth().mm() + wide) / 2 * slope);
        double touch = R - groove.depth().mm() - wide / 2 * slope;
        Polygon left = groove.polygon(Length.ofMm(R));
        int teeth = (int) pen.write(TEETH, Math.floor(span / steps.radial().mm() + 1 - NOTHING));
        List<Slice> slices = new ArrayList<>();
        for (int tooth = 1; tooth <= teeth; tooth++) {
            double line = touch + tooth * steps.radial().mm();
            // the last line lies beyond the last corner but for rounding: what is left is its slice
            Polygon cut = tooth == teeth ? left : left.beside(slope, line, true);
            double area = pen.write(areaOf(tooth), cut.area());
            double radius = pen.write(radiusOf(tooth), cut.centroidRadius());
            slices.add(new Slice(tooth, Area.ofMm2(area), Length.ofMm(radius), cut.outline()));
            left = left.beside(slope, line, false);
        }
        return slices;
    }

    /** The slices are clipped polygons; no formula of one line gives them. */
    public static Rule areaOf(int tooth) {
        return Rule.table(
                "A_s" + tooth, "mm²", GEOMETRY, Trust.DERIVED, "slice of tooth " + tooth + ", clipped exactly");
    }

    public static Rule radiusOf(int tooth) {
        return Rule.table("r_s" + tooth, "mm", GEOMETRY, Trust.DERIVED, "radius of the centroid of slice " + tooth);
    }

    private static Rule derived(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, GEOMETRY, Trust.DERIVED, means);
    }
}
