// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.cut.Driven.Drive;
import landfall.cut.Driven.Holder;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.Torque;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * What the way of turning does to tap and thread: docs/methods/cutting-speed.md.
 *
 * @param lag what the feed is ahead of the lead (behind it when negative) over the depth; null when no feed was told
 * @param push along the axis that the holder makes of it, in newtons; null when feed or holder were not told
 * @param slip setting of a slipping drive; null when none is used, or when there is no room for one
 */
public record DriveEffect(
        @Nullable Length lag, @Nullable Band push, @Nullable Slip slip) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/cutting-speed.md");
    private static final Source STIFFNESS = Source.of("memory", "stiffness of tap holders along the axis");
    private static final Source SETTING =
            Source.of("derived", "between what the cut asks for and what the tap bears, docs/methods/cutting-speed.md");

    static final Rule FEED = Rule.given("f_set", "mm", "feed that the machine is set to, each turn");
    public static final Rule LAG = new Rule(
            "e_f", "L_d*(f_set/L - 1)", "mm", GEOMETRY, Trust.DERIVED, "feed ahead of the lead over the depth");
    static final Rule SOFT = Rule.table("k_l", "N/mm", STIFFNESS, Trust.ESTIMATE, "stiffness of the holder, least");
    static final Rule USUAL = Rule.table("k_e", "N/mm", STIFFNESS, Trust.ESTIMATE, "stiffness of the holder");
    static final Rule STIFF = Rule.table("k_h", "N/mm", STIFFNESS, Trust.ESTIMATE, "stiffness of the holder, greatest");
    public static final Rule PUSH_LOW = push("F_el", "k_l*abs(e_f)", ", least");
    public static final Rule PUSH = push("F_e", "k_e*abs(e_f)", "");
    public static final Rule PUSH_HIGH = push("F_eh", "k_h*abs(e_f)", ", greatest");
    public static final Rule SLIP_LEAST =
            new Rule("M_min", "T_h", "N·m", SETTING, Trust.ESTIMATE, "slip, least setting: the upper torque");
    public static final Rule SLIP_MOST = new Rule(
            "M_max",
            "0.75*B_l",
            "N·m",
            SETTING,
            Trust.ESTIMATE,
            "slip, greatest setting: three quarters of the lower breaking torque");

    /** Least and greatest setting of a slipping drive. */
    public record Slip(Torque least, Torque most) {}

    static DriveEffect of(Tap tap, CutWish wish, Band torque, Band breaking, Pen pen) {
        Driven driven = wish.how().driven();
        Length lag = lag(tap, wish, pen);
        Band push = null;
        if (lag != null && driven.holder() != null) {
            push = push(driven.holder(), Math.abs(lag.mm()), pen);
        }
        return new DriveEffect(lag, push, slips(driven) ? slip(torque, breaking, pen) : null);
    }

    private static @Nullable Length lag(Tap tap, CutWish wish, Pen pen) {
        Length feed = wish.how().driven().feed();
        if (feed == null || wish.how().driven().byHand()) {
            return null;
        }
        double set = pen.write(FEED, feed.mm());
        double L = tap.thread().lead().perTurn().mm();
        return Length.ofMm(pen.write(LAG, wish.depth().mm() * (set / L - 1)));
    }

    private static Band push(Holder holder, double lag, Pen pen) {
        var row = CutTable.HOLDERS.need(holder.floats() ? "float" : holder == Holder.RIGID ? "rigid" : "synchronised");
        double soft = pen.write(SOFT, CutTable.number(row, 0));
        double usual = pen.write(USUAL, CutTable.number(row, 1));
        double stiff = pen.write(STIFF, CutTable.number(row, 2));
        return new Band(
                pen.write(PUSH_LOW, soft * lag), pen.write(PUSH, usual * lag), pen.write(PUSH_HIGH, stiff * lag));
    }

    /** A reversing head and a slipping holder slip; a drill press wants one of them. */
    static boolean slips(Driven driven) {
        Holder holder = driven.holder();
        return holder == null
                ? driven.by() == Drive.DRILL_PRESS
                : holder == Holder.SLIP || holder == Holder.REVERSING_HEAD;
    }

    private static @Nullable Slip slip(Band torque, Band breaking, Pen pen) {
        if (torque.high() > 0.75 * breaking.low()) {
            return null;
        }
        return new Slip(
                Torque.ofNm(pen.write(SLIP_LEAST, torque.high())),
                Torque.ofNm(pen.write(SLIP_MOST, 0.75 * breaking.low())));
    }

    private static Rule push(String symbol, String formula, String end) {
        return new Rule(symbol, formula, "N", STIFFNESS, Trust.ESTIMATE, "force along the axis of that" + end);
    }
}
