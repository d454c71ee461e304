// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.List;
import landfall.fault.Caution;
import landfall.grind.Stock;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import org.jspecify.annotations.Nullable;

/**
 * How often the chamfer can be ground back.
 *
 * <p>Each time its large end moves by s_all towards the shank: thread length less s_all, pitch diameter of the first
 * full thread less back taper times s_all. With the end ground back too the point keeps its diameter and the core is no
 * limit; with the end kept the point falls by 2 s_all tan κ each time and must stay over the core.
 */
final class ChamferLife {
    static final Rule BY_LENGTH = Counts.rule("n_l", "(l_t - l_min)/s_all", "chamfer sharpenings by the thread length");
    static final Rule BACK_TAPER = Rule.given("t_b", "1", "back taper, pitch diameter lost per length");
    static final Rule BY_PITCH =
            Counts.rule("n_E", "(E_0 - E_min)/(t_b*s_all)", "chamfer sharpenings by the pitch diameter");
    static final Rule REACH = Rule.given("l_sp", "mm", "length of the spiral point from the tap's end");
    static final Rule BY_REACH = Counts.rule(
            "n_sp",
            "(l_sp - l_c - 2*P)/s_all",
            "chamfer sharpenings until the point reaches two threads past the chamfer");
    static final Rule CORE = Rule.given("d_core", "mm", "diameter of the core");
    static final Rule BY_CORE = Counts.rule(
            "n_core",
            "(d_p - d_core)/(2*s_all*tan(κ))",
            "chamfer sharpenings until the point, its end kept, comes down to the core");
    static final Rule CAP = Rule.given("n_cap", "1", "most sharpenings that the shop has agreed on");

    private final Tap tap;
    private final LifeWish wish;
    private final Stock stock;
    private final Margins margins;

    ChamferLife(Tap tap, LifeWish wish, Stock stock, Margins margins) {
        this.tap = tap;
        this.wish = wish;
        this.stock = stock;
        this.margins = margins;
    }

    double each() {
        return stock.after().wholeAxial().mm();
    }

    double pitchEach() {
        Double taper = tap.body().backTaper();
        return taper == null ? 0 : taper * each();
    }

    LeftByWay.ByChamfer count(List<Caution> cautions, Pen pen) {
        Counts counts = new Counts();
        if (margins.thread() != null) {
            counts.add(LifeLimit.THREAD_LENGTH, BY_LENGTH, margins.thread() / each(), pen);
        }
        Double taper = tap.body().backTaper();
        if (taper == null) {
            cautions.add(new Caution(
                    "backTaperNotTold",
                    "The back taper is not told, so pitch diameter limits nothing here.",
                    "backTaper"));
        } else if (margins.pitch() != null && taper > 0) {
            pen.write(BACK_TAPER, taper);
            counts.add(LifeLimit.PITCH_DIAMETER, BY_PITCH, margins.pitch() / pitchEach(), pen);
        }
        core(counts, cautions, pen);
        reach(counts, cautions, pen);
        counts.cap(wish.cap(), CAP, pen);
        Integer least = counts.least("n_chamfer", "sharpenings left by the chamfer", pen);
        return new LeftByWay.ByChamfer(stock.axial(), stock.allowance(), least, counts.limit());
    }

    /** How many the core allows, or null where the end is ground back or the core is not told. */
    @Nullable
    Double byCore() {
        Length core = tap.flutes().form().core();
        if (core == null || wish.end() == LifeWish.End.GROUND) {
            return null;
        }
        double room = tap.chamfer().pointDiameter().mm() - core.mm();
        return Math.max(0, room) / (2 * each() * Math.tan(tap.chamfer().angle().rad()));
    }

    private void core(Counts counts, List<Caution> cautions, Pen pen) {
        if (wish.end() == LifeWish.End.GROUND) {
            return;
        }
        Length core = tap.flutes().form().core();
        Double by = byCore();
        if (core == null || by == null) {
            cautions.add(new Caution(
                    "coreNotTold",
                    "With the end kept the point comes down to the core; the core is not told, so it limits nothing"
                            + " here.",
                    "flutes.core"));
            return;
        }
        pen.write(CORE, core.mm());
        counts.add(LifeLimit.CORE, BY_CORE, by, pen);
    }

    /** How many the reach of a spiral point allows, or null where there is none. */
    @Nullable
    Double byReach() {
        Length reach = wish.reach();
        if (reach == null || tap.flutes().kind() != FluteKind.SPIRAL_POINT) {
            return null;
        }
        double past = reach.mm()
                - stock.after().chamferLength().mm()
                - 2 * tap.thread().pitch().mm();
        return Math.max(0, past) / each();
    }

    private void reach(Counts counts, List<Caution> cautions, Pen pen) {
        if (tap.flutes().kind() != FluteKind.SPIRAL_POINT) {
            return;
        }
        Length reach = wish.reach();
        Double by = byReach();
        if (reach == null || by == null) {
            cautions.add(new Caution(
                    "reachNotTold",
                    "A spiral point must reach two threads past the chamfer after each sharpening; its length is not"
                            + " told, so it limits nothing here.",
                    "reach"));
            return;
        }
        pen.write(REACH, reach.mm());
        counts.add(LifeLimit.REACH, BY_REACH, by, pen);
    }
}
