// SPDX-License-Identifier: Apache-2.0
package landfall.chip;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Area;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.Tap;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * The groove of one start that the tap cuts into the wall of a hole, in the axial plane: a trapezoid from the hole out
 * to the basic major diameter, straight flanks.
 *
 * <p>A tap whose pitch limits are on its card has them: its flanks lie apart by what its pitch diameter is over the
 * basic one, the crest stays at the basic major.
 *
 * @param depth from the hole to the crest
 * @param crestWidth axial, at the crest
 * @param flank angle to the plane square to the axis
 * @param area of one start's groove
 * @param radius of its centroid
 */
public record Groove(Length depth, Length crestWidth, Angle flank, Area area, Length radius) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/chip-slices.md");
    private static final Source PROFILE = Source.of("derived", "basic profile of the thread's family");
    public static final Rule MAJOR = Rule.given("d", "mm", "basic major diameter");
    public static final Rule PITCH = Rule.given("P", "mm", "pitch");
    public static final Rule HOLE = Rule.given("D_h", "mm", "diameter of the hole");
    static final Rule CREST_SHARE = Rule.table(
            "w_P", "1", PROFILE, Trust.DERIVED, "width of the basic groove at the major, share of the pitch");
    static final Rule FLANK = Rule.table("φ", "deg", PROFILE, Trust.DERIVED, "flank angle");
    static final Rule ADDENDUM =
            Rule.table("h_a", "1", PROFILE, Trust.DERIVED, "crest to pitch line, share of the pitch");
    static final Rule BASIC_PITCH_DIAMETER =
            new Rule("d_2", "d - 2*h_a*P", "mm", PROFILE, Trust.DERIVED, "basic pitch diameter, unrounded");
    static final Rule PITCH_LEAST = Rule.given("d_2min", "mm", "least pitch diameter of the tap");
    static final Rule PITCH_GREATEST = Rule.given("d_2max", "mm", "greatest pitch diameter of the tap");
    static final Rule OVER = new Rule(
            "ΔE",
            "(d_2min + d_2max)/2 - d_2",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "pitch diameter of the tap over the basic");
    public static final Rule DEPTH =
            new Rule("t", "(d - D_h)/2", "mm", GEOMETRY, Trust.DERIVED, "depth of the groove, hole to crest");
    static final Rule CREST_WIDTH =
            new Rule("w_c", "w_P*P", "mm", GEOMETRY, Trust.DERIVED, "width of the groove at the crest");
    static final Rule CREST_WIDTH_OVER =
            new Rule("w_c", "w_P*P + ΔE*tan(φ)", "mm", GEOMETRY, Trust.DERIVED, "width of the groove at the crest");
    public static final Rule AREA =
            new Rule("A_1", "t*w_c + t^2*tan(φ)", "mm²", GEOMETRY, Trust.DERIVED, "area of the groove of one start");
    public static final Rule RADIUS = new Rule(
            "r_c",
            "d/2 - (w_c*t^2/2 + 2*tan(φ)*t^3/3)/A_1",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "radius of the groove's centroid");

    /** The groove that a tap cuts in a hole. */
    public static Groove of(Tap tap, Length hole, Pen pen) {
        ScrewThread thread = tap.thread();
        double d = pen.write(MAJOR, thread.major().mm());
        double P = pen.write(PITCH, thread.pitch().mm());
        double D_h = pen.write(HOLE, hole.mm());
        double phi = pen.write(FLANK, thread.profile().flankAngle().deg());
        double slope = Math.tan(Math.toRadians(phi));
        double w_c = crestWidth(tap, P, slope, pen);
        judge(thread, hole, w_c, slope);
        double t = pen.write(DEPTH, (d - D_h) / 2);
        double A_1 = pen.write(AREA, t * w_c + t * t * slope);
        double r_c = pen.write(RADIUS, d / 2 - (w_c * t * t / 2 + 2 * slope * t * t * t / 3) / A_1);
        return new Groove(Length.ofMm(t), Length.ofMm(w_c), Angle.ofDeg(phi), Area.ofMm2(A_1), Length.ofMm(r_c));
    }

    private static double crestWidth(Tap tap, double P, double slope, Pen pen) {
        double w_P = pen.write(CREST_SHARE, tap.thread().profile().crestFlat());
        Limits limit = tap.pitch().limit();
        if (limit == null || limit.min() == null || limit.max() == null) {
            return pen.write(CREST_WIDTH, w_P * P);
        }
        double h_a = pen.write(ADDENDUM, tap.thread().profile().addendum());
        double d_2 = pen.write(BASIC_PITCH_DIAMETER, tap.thread().major().mm() - 2 * h_a * P);
        double least = pen.write(PITCH_LEAST, limit.min().mm());
        double greatest = pen.write(PITCH_GREATEST, limit.max().mm());
        double over = pen.write(OVER, (least + greatest) / 2 - d_2);
        return pen.write(CREST_WIDTH_OVER, w_P * P + over * slope);
    }

    /**
     * The hole lies between the bottom of the sharp thread, where grooves would run together, and the major diameter.
     */
    private static void judge(ScrewThread thread, Length hole, double crestWidth, double slope) {
        double sharp = thread.major().mm() - (thread.pitch().mm() - crestWidth) / slope;
        if (!(hole.mm() > sharp && hole.mm() < thread.major().mm())) {
            throw new OutOfRange(
                    "hole",
                    hole.words(),
                    "over " + Length.ofMm(sharp).words() + " and under the major diameter, "
                            + thread.major().words(),
                    "measure the hole, or look at the drill and the call-out again");
        }
    }

    /** Axial width where the groove meets the hole. */
    public Length holeWidth() {
        return Length.ofMm(crestWidth.mm() + 2 * depth.mm() * Math.tan(flank.rad()));
    }

    /** The groove's corners, crest radius as asked: z along the axis, its middle at 0. */
    Polygon polygon(Length crestRadius) {
        double wide = holeWidth().mm() / 2;
        double narrow = crestWidth.mm() / 2;
        double R = crestRadius.mm();
        return Polygon.of(
                new double[] {-wide, wide, narrow, -narrow}, new double[] {R - depth.mm(), R - depth.mm(), R, R});
    }
}
