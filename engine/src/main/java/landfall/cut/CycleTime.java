// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.chip.ChipBreak;
import landfall.cut.CutWish.Opening;
import landfall.cut.Driven.Holder;
import landfall.quantity.Length;
import landfall.quantity.TimeSpan;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * Time in and out by the way the tap is turned, and how far a spindle runs on: docs/methods/cutting-speed.md.
 *
 * <p>Held to the feed, a spindle ramps up and down inside the way; stopped and started by a switch, each way costs the
 * stop besides; a reversing head runs out faster than in and does not stop; a hand turns back and forth to break the
 * chip.
 */
final class CycleTime {
    private static final Source PRACTICE = Source.of("common-practice", "tapping by hand and by machine");
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/cutting-speed.md");
    private static final Source ASSUMED = Source.of("memory", "spindles of small machines");

    static final Rule CLEARANCE = Rule.table("c_a", "mm", PRACTICE, Trust.PRACTICE, "start above the hole, assumed");
    static final Rule WAY =
            new Rule("Z", "c_a + L_d + l_c", "mm", GEOMETRY, Trust.DERIVED, "way of the tap, one direction");
    static final Rule ACCELERATION =
            Rule.table("a_n", "rev/s²", ASSUMED, Trust.ESTIMATE, "acceleration of the spindle, assumed");
    static final Rule RAMP = new Rule("t_r", "n/60/a_n", "s", GEOMETRY, Trust.DERIVED, "time of one ramp");
    static final Rule HELD = time(
            "2*if(Z/L >= n/60*t_r, 60*Z/(L*n) + t_r, 2*sqrt(Z/(L*a_n)))",
            "time in and out, spindle held to the feed, with ramps");
    static final Rule STOP = Rule.table(
            "t_stop", "s", ASSUMED, Trust.ESTIMATE, "time a spindle takes to stop when it is not held to the feed");
    static final Rule SWITCHED =
            time("2*(60*Z/(L*n) + t_stop)", "time in and out, spindle stopped and turned back by its switch");
    static final Rule FASTER_BACK = Rule.table(
            "r_b", "1", ASSUMED, Trust.ESTIMATE, "speed of a reversing head on the way out over that on the way in");
    static final Rule REVERSING = time("60*Z/(L*n)*(1 + 1/r_b)", "time in and out, reversing head");
    static final Rule BY_HAND_RATE =
            Rule.table("n_w", "rev/min", PRACTICE, Trust.PRACTICE, "turns of a hand wrench a minute");
    static final Rule BACK_AND_FORTH = new Rule(
            "w_t",
            "(n_hf + n_hb)/(n_hf - n_hb)",
            "1",
            PRACTICE,
            Trust.PRACTICE,
            "turns of the wrench for one turn of progress, by habit");
    static final Rule STRAIGHT_ON = Rule.table(
            "w_t", "1", PRACTICE, Trust.PRACTICE, "turns of the wrench for one turn of progress: never turned back");
    static final Rule BY_HAND = time("60*(L_d + l_c)/L*(w_t + 1)/n_w", "time in and out by hand");
    static final Rule OVERRUN = new Rule(
            "l_over", "0.5*n/60*t_stop*L", "mm", GEOMETRY, Trust.ESTIMATE, "run on after the stop, not synchronised");

    private static final double STOPS_IN = 0.2;

    private final CutWish wish;
    private final Driven driven;
    private final double n;
    private final double L;
    private final Pen pen;

    /** n in rev/min, L in mm; both have been written. */
    CycleTime(CutWish wish, double n, double L, Pen pen) {
        this.wish = wish;
        this.driven = wish.how().driven();
        this.n = n;
        this.L = L;
        this.pen = pen;
    }

    /** {@code turns} between chip breaks; null where none are made. The chamfer's length, in mm, has been written. */
    TimeSpan inAndOut(double chamfer, @Nullable ChipBreak turns) {
        double below = wish.depth().mm() + chamfer;
        return TimeSpan.ofSeconds(driven.byHand() ? byHand(below, turns) : byMachine(below));
    }

    private double byHand(double below, @Nullable ChipBreak turns) {
        double back = turns == null
                ? pen.write(STRAIGHT_ON, 1)
                : pen.write(
                        BACK_AND_FORTH,
                        (turns.habitForward() + turns.habitBack()) / (turns.habitForward() - turns.habitBack()));
        double rate = pen.write(BY_HAND_RATE, 20);
        return pen.write(BY_HAND, 60 * below / L * (back + 1) / rate);
    }

    private double byMachine(double below) {
        double c_a = pen.write(CLEARANCE, 3);
        double Z = pen.write(WAY, c_a + below);
        double running = 60 * Z / (L * n);
        if (driven.holder() == Holder.REVERSING_HEAD) {
            double faster = pen.write(FASTER_BACK, 1.75);
            return pen.write(REVERSING, running * (1 + 1 / faster));
        }
        if (!driven.synchronised()) {
            double t_stop = pen.write(STOP, STOPS_IN);
            return pen.write(SWITCHED, 2 * (running + t_stop));
        }
        double a_n = pen.write(ACCELERATION, 50);
        double t_r = pen.write(RAMP, n / 60 / a_n);
        boolean reaches = Z / L >= n / 60 * t_r;
        return pen.write(HELD, 2 * (reaches ? running + t_r : 2 * Math.sqrt(Z / (L * a_n))));
    }

    /** Null but in blind holes, and where the spindle does not run on. */
    @Nullable
    Length overrun() {
        if (wish.how().opening() != Opening.BLIND || !driven.runsOn()) {
            return null;
        }
        double t_stop = driven.synchronised() || driven.holder() == Holder.REVERSING_HEAD
                ? pen.write(STOP, STOPS_IN)
                : STOPS_IN;
        return Length.ofMm(pen.write(OVERRUN, 0.5 * n / 60 * t_stop * L));
    }

    private static Rule time(String formula, String means) {
        return new Rule("t_all", formula, "s", GEOMETRY, Trust.ESTIMATE, means);
    }
}
