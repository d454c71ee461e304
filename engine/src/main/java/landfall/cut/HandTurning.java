// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * Bars for turning by hand: docs/methods/cutting-speed.md.
 *
 * @param safe whole bar with which fingers alone stay well under the breaking torque
 * @param needed whole bar with which two firm hands give the upper torque
 * @param breaks whole bar with which two firm hands can break the tap
 * @param gives what fingers, firm hands and all one's strength give on the bar told, in N·m; null when none was
 */
public record HandTurning(
        Length safe, Length needed, Length breaks, @Nullable Band gives) {
    private static final Source PRACTICE = Source.of("common-practice", "force of hands on a tap wrench");
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/cutting-speed.md");
    static final Rule FINGERS = Rule.table("F_f", "N", PRACTICE, Trust.PRACTICE, "force of the fingers of one hand");
    static final Rule FIRM = Rule.table("F_h", "N", PRACTICE, Trust.PRACTICE, "firm force of one hand");
    static final Rule STRONG = Rule.table(
            "F_s",
            "N",
            Source.of("hand-force-guide", "horizontal push or pull"),
            Trust.HANDBOOK,
            "limit of push or pull of one hand");
    static final Rule SHARE =
            Rule.table("s_b", "1", PRACTICE, Trust.PRACTICE, "share of the breaking torque that fingers may reach");
    public static final Rule SAFE =
            bar("l_safe", "1000*s_b*B_e/F_f", "whole bar at which fingers cannot break the tap");
    public static final Rule NEEDED = bar("l_need", "1000*T_h/F_h", "whole bar for the upper torque, both hands firm");
    public static final Rule BREAKS =
            bar("l_brk", "1000*B_l/F_h", "whole bar at which two firm hands can break the tap");
    static final Rule BAR = Rule.given("l_bar", "mm", "whole length of the bar");
    public static final Rule BY_FINGERS = gives("M_f", "F_f*l_bar/1000", "torque of the fingers on this bar");
    public static final Rule BY_FIRM = gives("M_h", "F_h*l_bar/1000", "torque of two firm hands on this bar");
    public static final Rule BY_STRENGTH =
            gives("M_s", "F_s*l_bar/1000", "torque of two hands at their limit on this bar");

    static HandTurning of(Band breaking, Band torque, @Nullable Length bar, Pen pen) {
        double fingers = pen.write(FINGERS, 25);
        double firm = pen.write(FIRM, 100);
        double share = pen.write(SHARE, 0.35);
        return new HandTurning(
                Length.ofMm(pen.write(SAFE, 1000 * share * breaking.expected() / fingers)),
                Length.ofMm(pen.write(NEEDED, 1000 * torque.high() / firm)),
                Length.ofMm(pen.write(BREAKS, 1000 * breaking.low() / firm)),
                bar == null ? null : gives(fingers, firm, bar.mm(), pen));
    }

    private static Band gives(double fingers, double firm, double bar, Pen pen) {
        double strong = pen.write(STRONG, 225);
        double l_bar = pen.write(BAR, bar);
        return new Band(
                pen.write(BY_FINGERS, fingers * l_bar / 1000),
                pen.write(BY_FIRM, firm * l_bar / 1000),
                pen.write(BY_STRENGTH, strong * l_bar / 1000));
    }

    private static Rule bar(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "mm", GEOMETRY, Trust.ESTIMATE, means);
    }

    private static Rule gives(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "N·m", GEOMETRY, Trust.ESTIMATE, means);
    }
}
