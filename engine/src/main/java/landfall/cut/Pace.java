// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.cut.CutWish.Opening;
import landfall.material.Between;
import landfall.material.Marked;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.Speed;
import landfall.quantity.TimeSpan;
import landfall.quantity.Turning;
import landfall.tap.Chamfer;
import landfall.tap.Tap;
import landfall.tap.TapMaterial;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * Speed, spindle, power, time: docs/methods/cutting-speed.md.
 *
 * @param speed in m/min
 * @param power at the spindle, in watts
 * @param time in and out again, without positioning
 * @param overrun of a spindle that is stopped and not held to the feed; null but in blind holes
 */
public record Pace(
        Band speed,
        Turning spindle,
        Band power,
        TimeSpan time,
        @Nullable Length overrun) {
    private static final Source PRACTICE = Source.of("common-practice", "speed of taps by chamfer, flutes and depth");
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/cutting-speed.md");
    private static final Source ASSUMED = Source.of("memory", "spindles of small machining centres");
    static final Rule SLOWER =
            Rule.table("K_v", "1", PRACTICE, Trust.PRACTICE, "speed for this tap and depth over the list's");
    public static final Rule SPEED_LOW = practice("v_l", "v_1*K_v", "cutting speed, least");
    public static final Rule SPEED = practice("v", "(v_1 + v_2)/2*K_v", "cutting speed");
    public static final Rule SPEED_HIGH = practice("v_h", "v_2*K_v", "cutting speed, greatest");
    public static final Rule SPINDLE = geometry("n", "1000*v/(pi*d)", "rev/min", "spindle speed");
    public static final Rule POWER_LOW = power("P_wl", "2*pi*n/60*T_l", "power, low");
    public static final Rule POWER = power("P_w", "2*pi*n/60*T", "power");
    public static final Rule POWER_HIGH = power("P_wh", "2*pi*n/60*T_h", "power, high");
    static final Rule CLEARANCE = Rule.table("c_s", "mm", PRACTICE, Trust.PRACTICE, "start above the hole, assumed");
    static final Rule CHAMFER_LENGTH = geometry("l_c", "n_c*P", "mm", "length of the chamfer along the axis");
    static final Rule WAY = geometry("Z", "c_s + L_d + l_c", "mm", "way of the tap, one direction");
    static final Rule ACCELERATION =
            Rule.table("a_n", "rev/s²", ASSUMED, Trust.ESTIMATE, "acceleration of the spindle, assumed");
    static final Rule RAMP = geometry("t_r", "n/60/a_n", "s", "time of one ramp");
    public static final Rule TIME = new Rule(
            "t_all",
            "2*if(Z/L >= n/60*t_r, 60*Z/(L*n) + t_r, 2*sqrt(Z/(L*a_n)))",
            "s",
            GEOMETRY,
            Trust.ESTIMATE,
            "time in and out, synchronised, with ramps");
    static final Rule STOP = Rule.table(
            "t_stop", "s", ASSUMED, Trust.ESTIMATE, "time a spindle takes to stop when it is not held to the feed");
    public static final Rule OVERRUN = new Rule(
            "l_over", "0.5*n/60*t_stop*L", "mm", GEOMETRY, Trust.ESTIMATE, "run on after the stop, not synchronised");

    private static final double SHORT_CHAMFER = 2;
    private static final double DEEP = 1.5;

    static Pace of(Tap tap, CutWish wish, Band torque, Pen pen) {
        Marked<Between<Speed>> row = wish.material().cutting().speed();
        double v_1 = pen.write(
                Rule.table("v_1", "m/min", row.source(), row.trust(), "speed of the list for HSS, least"),
                row.value().least().mPerMin());
        double v_2 = pen.write(
                Rule.table("v_2", "m/min", row.source(), row.trust(), "speed of the list for HSS, greatest"),
                row.value().greatest().mPerMin());
        Chamfer chamfer = tap.chamfer();
        double K_v = pen.write(SLOWER, slower(tap, chamfer, wish));
        double v = pen.write(SPEED, (v_1 + v_2) / 2 * K_v);
        Band speed = new Band(pen.write(SPEED_LOW, v_1 * K_v), v, pen.write(SPEED_HIGH, v_2 * K_v));
        double n = pen.write(SPINDLE, 1000 * v / (Math.PI * tap.thread().major().mm()));
        double L = tap.thread().lead().perTurn().mm();
        double perNm = 2 * Math.PI * n / 60;
        Band power = new Band(
                pen.write(POWER_LOW, perNm * torque.low()),
                pen.write(POWER, perNm * torque.expected()),
                pen.write(POWER_HIGH, perNm * torque.high()));
        double l_c = pen.write(
                CHAMFER_LENGTH, chamfer.threads() * tap.thread().pitch().mm());
        double time = time(wish.depth().mm() + l_c, n, L, pen);
        Length overrun = null;
        if (wish.how().opening() == Opening.BLIND) {
            double t_stop = pen.write(STOP, 0.2);
            overrun = Length.ofMm(pen.write(OVERRUN, 0.5 * n / 60 * t_stop * L));
        }
        return new Pace(speed, Turning.ofRevPerMin(n), power, TimeSpan.ofSeconds(time), overrun);
    }

    private static double time(double below, double n, double L, Pen pen) {
        double c_s = pen.write(CLEARANCE, 3);
        double Z = pen.write(WAY, c_s + below);
        double a_n = pen.write(ACCELERATION, 50);
        double t_r = pen.write(RAMP, n / 60 / a_n);
        boolean reaches = Z / L >= n / 60 * t_r;
        return pen.write(TIME, 2 * (reaches ? 60 * Z / (L * n) + t_r : 2 * Math.sqrt(Z / (L * a_n))));
    }

    /** A quarter off for a short chamfer or spiral flutes, a quarter off for a deep hole, half for carbon steel. */
    private static double slower(Tap tap, Chamfer chamfer, CutWish wish) {
        double factor = 1;
        if (chamfer.threads() <= SHORT_CHAMFER || tap.flutes().kind().isSpiral()) {
            factor *= 0.75;
        }
        if (wish.depth().over(tap.thread().major()) > DEEP) {
            factor *= 0.75;
        }
        return tap.make().material() == TapMaterial.CARBON ? factor * 0.5 : factor;
    }

    private static Rule practice(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "m/min", PRACTICE, Trust.PRACTICE, means);
    }

    private static Rule power(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "W", GEOMETRY, Trust.ESTIMATE, means);
    }

    private static Rule geometry(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, GEOMETRY, Trust.DERIVED, means);
    }
}
