// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.material.Between;
import landfall.material.Marked;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.Speed;
import landfall.quantity.TimeSpan;
import landfall.quantity.Turning;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.tap.TapMaterial;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;

/**
 * Speed and spindle of a tap, and its time in a hole, by the little that is known before anybody has measured it:
 * docs/methods/cutting-speed.md.
 *
 * @param speed in m/min
 */
public record Tempo(Band speed, Turning spindle) {
    private static final double SHORT_CHAMFER = 2;
    private static final double DEEP = 1.5;
    /** Three quarters of a turn forward and half a turn back, by habit. */
    private static final double FORWARD = 0.75;

    private static final double BACK = 0.5;

    /**
     * What a tap's speed hangs on.
     *
     * @param chamferThreads length of the chamfer in pitches
     */
    public record Known(FluteKind flutes, double chamferThreads, TapMaterial material) {
        static Known of(Tap tap) {
            return new Known(
                    tap.flutes().kind(), tap.chamfer().threads(), tap.make().material());
        }
    }

    /** By the list of the wish's material. */
    public static Tempo of(ScrewThread thread, Known tap, CutWish wish, Pen pen) {
        Marked<Between<Speed>> row = wish.material().cutting().speed();
        double v_1 = pen.write(
                Rule.table("v_1", "m/min", row.source(), row.trust(), "speed of the list for HSS, least"),
                row.value().least().mPerMin());
        double v_2 = pen.write(
                Rule.table("v_2", "m/min", row.source(), row.trust(), "speed of the list for HSS, greatest"),
                row.value().greatest().mPerMin());
        double K_v = pen.write(Pace.SLOWER, slower(thread, tap, wish.depth()));
        double v = pen.write(Pace.SPEED, (v_1 + v_2) / 2 * K_v);
        Band speed = new Band(pen.write(Pace.SPEED_LOW, v_1 * K_v), v, pen.write(Pace.SPEED_HIGH, v_2 * K_v));
        double n = pen.write(Pace.SPINDLE, 1000 * v / (Math.PI * thread.major().mm()));
        return new Tempo(speed, Turning.ofRevPerMin(n));
    }

    /** Time in and out of one hole; by hand straight flutes turn back to break the chip, by habit. */
    public TimeSpan time(ScrewThread thread, Known tap, CutWish wish, Pen pen) {
        double L = thread.lead().perTurn().mm();
        double l_c = pen.write(
                Pace.CHAMFER_LENGTH, tap.chamferThreads * thread.pitch().mm());
        CycleTime cycle = new CycleTime(wish, spindle.revPerMin(), L, pen);
        boolean turnsBack = wish.how().driven().byHand() && tap.flutes == FluteKind.STRAIGHT;
        if (turnsBack) {
            pen.write(landfall.chip.ChipBreak.HABIT_FORWARD, FORWARD);
            pen.write(landfall.chip.ChipBreak.HABIT_BACK, BACK);
        }
        return cycle.inAndOut(l_c, turnsBack ? new landfall.chip.ChipBreak(0, 0, FORWARD, BACK) : null);
    }

    /** A quarter off for a short chamfer or spiral flutes, a quarter off for a deep hole, half for carbon steel. */
    private static double slower(ScrewThread thread, Known tap, Length depth) {
        double factor = 1;
        if (tap.chamferThreads <= SHORT_CHAMFER || tap.flutes.isSpiral()) {
            factor *= 0.75;
        }
        if (depth.over(thread.major()) > DEEP) {
            factor *= 0.75;
        }
        return tap.material == TapMaterial.CARBON ? factor * 0.5 : factor;
    }
}
