// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * How deep everything goes, from the face.
 *
 * @param fullThread depth of full thread
 * @param tapPoint depth of the tap's point
 * @param drill depth of full diameter
 * @param drillPoint depth of the tip of a 118 degree drill
 * @param chipStore length of hole kept for chips that stay in it
 * @param chamferThreads of the tap
 */
public record DepthStack(
        Length fullThread, Length tapPoint, Length drill, Length drillPoint, Length chipStore, double chamferThreads) {
    private static final Source PRACTICE = Source.of("common-practice", "room below the thread");
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/tap-drill.md, depth stack");

    public static final Rule DEPTH = Rule.given("T_f", "mm", "depth of full thread, from the face");
    static final Rule DEPTH_FOR_INSERT = new Rule(
            "T_f",
            "Q_i + P_0",
            "mm",
            Source.of("asme-b18.29.2m-notes", "depth of thread"),
            Trust.HANDBOOK,
            "depth of full thread, from the face: what the insert needs");
    static final Rule CHAMFER_GIVEN = Rule.given("n_c", "1", "threads in the tap's chamfer");
    static final Rule CHAMFER_USUAL = Rule.table(
            "n_c",
            "1",
            Source.of("common-practice", "4 through, 2 blind"),
            Trust.PRACTICE,
            "threads in the tap's chamfer");
    public static final Rule TAP_POINT =
            new Rule("T_p", "T_f + n_c*P_0", "mm", GEOMETRY, Trust.DERIVED, "depth of the tap's point");
    static final Rule CLEARANCE =
            new Rule("c_0", "max(1, P_0)", "mm", PRACTICE, Trust.PRACTICE, "room below the tap: 1 mm or one pitch");
    static final Rule GROOVE =
            new Rule("t_g", "(d_0 - E_x)/2", "mm", GEOMETRY, Trust.ESTIMATE, "depth of the groove that is cut");
    static final Rule GROOVE_AREA = new Rule(
            "A_g", "t_g*P_0/8 + t_g^2*tan(30)", "mm²", GEOMETRY, Trust.ESTIMATE, "area of the groove that is cut");
    static final Rule GROOVE_RADIUS = new Rule(
            "r_g",
            "d_0/2 - (P_0*t_g^2/16 + 2/3*tan(30)*t_g^3)/A_g",
            "mm",
            GEOMETRY,
            Trust.ESTIMATE,
            "radius of the middle of that area");
    static final Rule BULK = Rule.table(
            "b_c",
            "1",
            Source.of("memory", "chips pressed in a flute take 3 to 8 times their solid volume"),
            Trust.ESTIMATE,
            "room that chips take over their solid volume");
    static final Rule STORE_COMPUTED = new Rule(
            "c_s",
            "b_c*2*pi*r_g*A_g/P_0*T_f/(pi*E_x^2/4)",
            "mm",
            GEOMETRY,
            Trust.ESTIMATE,
            "length of hole for chips that stay in it");
    static final Rule STORE_NONE =
            new Rule("c_s", "0", "mm", GEOMETRY, Trust.DERIVED, "length of hole for chips: none stay in it");
    public static final Rule DRILL =
            new Rule("T_d", "T_p + c_0 + c_s", "mm", GEOMETRY, Trust.DERIVED, "depth of full drill diameter");
    public static final Rule DRILL_POINT = new Rule(
            "T_t", "T_d + δ/2/tan(59)", "mm", GEOMETRY, Trust.DERIVED, "depth of the drill's tip, 118 deg point");

    private static final double THROUGH_THREADS = 4;
    private static final double BLIND_THREADS = 2;
    private static final double BULKING = 5.5;

    /** The rule of the figure {@code chipStore}. */
    public Rule chipStoreRule() {
        return chipStore.mm() == 0 ? STORE_NONE : STORE_COMPUTED;
    }

    static DepthStack of(HoleWish wish, Length depth, Drilled drilled, Pen pen) {
        ScrewThread thread = wish.callOut().thread();
        double P = thread.pitch().mm();
        Double told = wish.tools().chamferThreads();
        double T = depth(wish, depth, pen);
        double n = told != null
                ? pen.write(CHAMFER_GIVEN, told)
                : pen.write(CHAMFER_USUAL, wish.through() ? THROUGH_THREADS : BLIND_THREADS);
        double point = pen.write(TAP_POINT, T + n * P);
        double clearance = pen.write(CLEARANCE, Math.max(1, P));
        double store = chipsStay(wish) ? store(thread, T, drilled, pen) : pen.write(STORE_NONE, 0);
        double drill = pen.write(DRILL, point + clearance + store);
        double tip = pen.write(DRILL_POINT, drill + drilled.drill().diameter().mm() / 2 / Math.tan(Math.toRadians(59)));
        return new DepthStack(depth, Length.ofMm(point), Length.ofMm(drill), Length.ofMm(tip), Length.ofMm(store), n);
    }

    private static double depth(HoleWish wish, Length depth, Pen pen) {
        Length insert = wish.place().insert();
        if (wish.place().depth() != null || insert == null) {
            return pen.write(DEPTH, depth.mm());
        }
        pen.write(InsertSeat.GIVEN, insert.mm());
        return pen.write(DEPTH_FOR_INSERT, depth.mm());
    }

    /** Chips stay below the thread when the hole is blind and the flutes do not bring them out. */
    static boolean chipsStay(HoleWish wish) {
        @Nullable FluteKind flutes = wish.tools().flutes();
        return !wish.through()
                && (flutes == FluteKind.STRAIGHT || flutes == FluteKind.SPIRAL_POINT || flutes == FluteKind.SPIRAL_LEFT)
                && ShareBasis.of(wish.callOut().thread(), false) == ShareBasis.FULL_DEPTH;
    }

    private static double store(ScrewThread thread, double T, Drilled drilled, Pen pen) {
        double d = thread.major().mm();
        double P = thread.pitch().mm();
        double E = drilled.expected().expected();
        double tan = Math.tan(Math.toRadians(30));
        double t = pen.write(GROOVE, (d - E) / 2);
        double A = pen.write(GROOVE_AREA, t * P / 8 + t * t * tan);
        double r = pen.write(GROOVE_RADIUS, d / 2 - (P * t * t / 16 + 2.0 / 3 * tan * t * t * t) / A);
        double b = pen.write(BULK, BULKING);
        return pen.write(STORE_COMPUTED, b * 2 * Math.PI * r * A / P * T / (Math.PI * E * E / 4));
    }
}
