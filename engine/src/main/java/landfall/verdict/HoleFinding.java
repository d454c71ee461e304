// SPDX-License-Identifier: Apache-2.0
package landfall.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Measured;
import landfall.quantity.UnitSystem;
import landfall.thread.CallOut;
import landfall.thread.SideLimits;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/** The verdict on a tapped hole: minor by a pin, pitch by plugs or measured, depth by the turns of GO. */
final class HoleFinding {
    private static final Source DEPTH = Source.of("derived", "docs/methods/verdicts.md, depth by turns");
    static final Rule TURNS = Rule.given("n_p", "1", "turns that GO went in, from where the first thread catches");
    static final Rule LEAD = Rule.table("L_p", "mm", DEPTH, Trust.DERIVED, "lead of the thread");
    public static final Rule FULL_MOST =
            new Rule("l_full.max", "n_p*L_p", "mm", DEPTH, Trust.DERIVED, "full thread by the turns of GO, at most");
    public static final Rule FULL_LEAST = new Rule(
            "l_full.min",
            "max(0, (n_p - 1)*L_p)",
            "mm",
            DEPTH,
            Trust.DERIVED,
            "full thread by the turns of GO, the first thread being none");

    /** How well turns are counted by eye: common practice. */
    private static final double QUARTER_TURN = 0.25;

    private static final double TURNS_INCH = 3;
    private static final double TURNS_METRIC = 2;

    private final CallOut callOut;
    private final OnBench.AHole hole;
    private final Pen pen;
    private final List<Judged> judged = new ArrayList<>();

    HoleFinding(CallOut callOut, OnBench.AHole hole, Pen pen) {
        this.callOut = callOut;
        this.hole = hole;
        this.pen = pen;
    }

    Found found(@Nullable Measured pitch, SideLimits limits) {
        if (hole.minor() != null) {
            judged.add(Judged.of("minor diameter of the hole", hole.minor(), limits.minor(), pen));
        }
        if (pitch != null) {
            judged.add(Judged.of("pitch diameter of the hole", pitch, limits.pitch(), pen));
        }
        OnBench.Plugs plugs = hole.plugs();
        if (plugs.goes() != null) {
            judged.add(gauged(
                    "GO plug",
                    plugs.goes() ? Verdict.GO : Verdict.NOT_GO,
                    plugs.goes() ? "runs the whole length" : "does not run the whole length"));
        }
        if (plugs.notGoTurns() != null) {
            judged.add(notGo(plugs.notGoTurns()));
        }
        Found.Depth depth = plugs.goTurns() == null ? null : depth(plugs.goTurns());
        if (depth != null && plugs.depth() != null) {
            judged.add(deep(depth, plugs.depth()));
        }
        if (judged.isEmpty() && depth == null) {
            throw new OutOfRange(
                    "part",
                    "hole",
                    "told with something that was found on it",
                    "give pin, pitch-diameter, go, go-turns or not-go-turns");
        }
        Verdict verdict =
                judged.stream().map(Judged::verdict).reduce(Verdict::and).orElse(null);
        return new Found("hole", verdict, judged, null, depth, cautions(pitch));
    }

    private static Judged gauged(String what, Verdict verdict, String why) {
        return new Judged(what, null, Judged.OPEN, verdict, why);
    }

    private Judged notGo(double turns) {
        boolean inch = callOut.thread().family().system() == UnitSystem.INCH;
        double allowed = inch ? TURNS_INCH : TURNS_METRIC;
        return gauged(
                "NOT GO plug",
                Verdict.by(allowed - turns, QUARTER_TURN),
                String.format(
                        Locale.ROOT,
                        "went in %s turns; up to %.0f may be, with drag (from memory), counted to a quarter",
                        turns(turns),
                        allowed));
    }

    private static String turns(double turns) {
        return turns == Math.rint(turns) ? Long.toString((long) turns) : String.format(Locale.ROOT, "%.2f", turns);
    }

    private Found.Depth depth(double turns) {
        double n_p = pen.write(TURNS, turns);
        double L_p = pen.write(LEAD, callOut.thread().lead().perTurn().mm());
        double least = pen.write(FULL_LEAST, Math.max(0, (n_p - 1) * L_p));
        return new Found.Depth(Limits.ofMm(least, pen.write(FULL_MOST, n_p * L_p)));
    }

    private Judged deep(Found.Depth depth, Length wanted) {
        double least = depth.full().min() == null ? 0 : depth.full().min().mm();
        double most = depth.full().max() == null ? 0 : depth.full().max().mm();
        Verdict verdict = least >= wanted.mm() ? Verdict.GO : most < wanted.mm() ? Verdict.NOT_GO : Verdict.BORDERLINE;
        return gauged(
                "depth of full thread",
                verdict,
                "wanted %s; by the turns %s to %s"
                        .formatted(
                                wanted.words(),
                                Length.ofMm(least).words(),
                                Length.ofMm(most).words()));
    }

    private List<Caution> cautions(@Nullable Measured pitch) {
        List<Caution> cautions = new ArrayList<>();
        OnBench.Plugs plugs = hole.plugs();
        if (pitch != null && plugs.goes() == null) {
            cautions.add(new Caution(
                    "functionalSize",
                    "A pitch diameter in its limits does not show that a screw goes in: errors of"
                            + " lead and flank make the"
                            + " hole act smaller. Only GO tells.",
                    "pitch diameter"));
        }
        if (plugs.goes() != null && plugs.notGoTurns() == null || plugs.goes() == null && plugs.notGoTurns() != null) {
            cautions.add(new Caution(
                    "otherPlugNotTried",
                    plugs.goes() != null
                            ? "NOT GO was not tried: the hole may be too large."
                            : "GO was not tried: the hole may be too small.",
                    "plugs"));
        }
        return cautions;
    }
}
