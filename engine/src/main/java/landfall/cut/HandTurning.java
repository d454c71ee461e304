// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * Bars for turning by hand: docs/methods/cutting-speed.md.
 *
 * @param safe whole bar with which fingers alone stay well under the breaking torque
 * @param needed whole bar with which two firm hands give the upper torque
 */
public record HandTurning(Length safe, Length needed) {
    private static final Source PRACTICE = Source.of("common-practice", "force of hands on a tap wrench");
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/cutting-speed.md");
    static final Rule FINGERS = Rule.table("F_f", "N", PRACTICE, Trust.PRACTICE, "force of the fingers of one hand");
    static final Rule FIRM = Rule.table("F_h", "N", PRACTICE, Trust.PRACTICE, "firm force of one hand");
    static final Rule SHARE =
            Rule.table("s_b", "1", PRACTICE, Trust.PRACTICE, "share of the breaking torque that fingers may reach");
    public static final Rule SAFE = new Rule(
            "l_safe",
            "1000*s_b*B_e/F_f",
            "mm",
            GEOMETRY,
            Trust.ESTIMATE,
            "whole bar at which fingers cannot break the tap");
    public static final Rule NEEDED = new Rule(
            "l_need",
            "1000*T_h/F_h",
            "mm",
            GEOMETRY,
            Trust.ESTIMATE,
            "whole bar for the upper torque, both hands firm");

    static HandTurning of(Band breaking, Band torque, Pen pen) {
        double fingers = pen.write(FINGERS, 25);
        double firm = pen.write(FIRM, 100);
        double share = pen.write(SHARE, 0.35);
        return new HandTurning(
                Length.ofMm(pen.write(SAFE, 1000 * share * breaking.expected() / fingers)),
                Length.ofMm(pen.write(NEEDED, 1000 * torque.high() / firm)));
    }
}
