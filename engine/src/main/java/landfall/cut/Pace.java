// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.chip.ChipBreak;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.TimeSpan;
import landfall.quantity.Turning;
import landfall.tap.Tap;
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
 * @param overrun of a spindle that is stopped and not held to the feed; null but in blind holes, and by hand
 */
public record Pace(
        Band speed,
        Turning spindle,
        Band power,
        TimeSpan time,
        @Nullable Length overrun) {
    private static final Source PRACTICE = Source.of("common-practice", "speed of taps by chamfer, flutes and depth");
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/cutting-speed.md");
    static final Rule SLOWER =
            Rule.table("K_v", "1", PRACTICE, Trust.PRACTICE, "speed for this tap and depth over the list's");
    public static final Rule SPEED_LOW = practice("v_l", "v_1*K_v", "cutting speed, least");
    public static final Rule SPEED = practice("v", "(v_1 + v_2)/2*K_v", "cutting speed");
    public static final Rule SPEED_HIGH = practice("v_h", "v_2*K_v", "cutting speed, greatest");
    public static final Rule SPINDLE = geometry("n", "1000*v/(pi*d)", "rev/min", "spindle speed");
    public static final Rule POWER_LOW = power("P_wl", "2*pi*n/60*T_l", "power, low");
    public static final Rule POWER = power("P_w", "2*pi*n/60*T", "power");
    public static final Rule POWER_HIGH = power("P_wh", "2*pi*n/60*T_h", "power, high");
    static final Rule CHAMFER_LENGTH = geometry("l_c", "n_c*P", "mm", "length of the chamfer along the axis");

    /** {@code turns} between chip breaks by hand; null where none are made. */
    static Pace of(Tap tap, CutWish wish, Band torque, @Nullable ChipBreak turns, Pen pen) {
        Tempo tempo = Tempo.of(tap.thread(), Tempo.Known.of(tap), wish, pen);
        double n = tempo.spindle().revPerMin();
        double L = tap.thread().lead().perTurn().mm();
        double perNm = 2 * Math.PI * n / 60;
        Band power = new Band(
                pen.write(POWER_LOW, perNm * torque.low()),
                pen.write(POWER, perNm * torque.expected()),
                pen.write(POWER_HIGH, perNm * torque.high()));
        double l_c = pen.write(
                CHAMFER_LENGTH, tap.chamfer().threads() * tap.thread().pitch().mm());
        CycleTime cycle = new CycleTime(wish, n, L, pen);
        TimeSpan time = cycle.inAndOut(l_c, turns);
        return new Pace(tempo.speed(), tempo.spindle(), power, time, cycle.overrun());
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
