// SPDX-License-Identifier: Apache-2.0
package landfall.verdict;

import java.util.Optional;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.CallOut;
import landfall.thread.Taper;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * A taper thread by its plug: where the notch must stand, what one turn is worth, and how many more turns to tap.
 *
 * <p>Depth sets the size of a taper hole: a tap one turn deeper opens it by a pitch times the taper, and the plug goes
 * in one turn further. So the turns to go are the stand-off over the pitch.
 *
 * @param notch from the plug's small end to its notch
 * @param pitchDiameter of the plug at the notch
 * @param perTurn depth of one turn
 * @param growthPerTurn of the diameter for one turn
 * @param standOff that is allowed, positive outwards: least (deeper) to greatest (out)
 * @param found null when no stand-off was measured
 */
public record TaperPlug(
        Length notch,
        Length pitchDiameter,
        Turn turn,
        Limits standOff,
        @Nullable Standing found) {
    private static final Source DEPTH = Source.of("derived", "docs/methods/pipe-threads.md, turns of the plug");
    static final Rule NOTCH = table("l_n", "mm", "from the small end of the plug to its notch: hand-tight length");
    static final Rule AT_NOTCH = table("E_n", "mm", "pitch diameter at the notch");
    static final Rule PER_TURN = table("p_t", "mm", "depth of one turn: the pitch");
    static final Rule PER_LENGTH = table("k_t", "1", "growth of the diameter over the length");
    public static final Rule GROWTH = rule("g_t", "p_t*k_t", "mm", "growth of the diameter for one turn");
    static final Rule OUT = table("n_out", "1", "turns that the notch may stand out");
    static final Rule IN = table("n_in", "1", "turns that it may stand deeper");
    public static final Rule OUT_LENGTH =
            rule("s_out", "n_out*p_t", "mm", "how far the notch may stand out of the face");
    public static final Rule IN_LENGTH =
            rule("s_in", "0 - n_in*p_t", "mm", "how far it may stand under the face, negative");
    static final Rule STAND_OFF = Rule.given("s", "mm", "stand-off of the notch, positive out of the face");
    public static final Rule TURNS = rule("n_s", "s/p_t", "1", "stand-off in turns");
    public static final Rule TO_GO = rule("n_go", "max(0, s/p_t)", "1", "turns to tap deeper until the notch is flush");
    public static final Rule TO_GO_LENGTH =
            rule("l_go", "n_go*p_t", "mm", "depth to tap deeper until the notch is flush");
    public static final Rule SIZE =
            rule("dE_s", "0 - s*k_t", "mm", "hole against its nominal size: over it when positive");

    /** One turn of the plug or of the tap. */
    public record Turn(Length depth, Length growth) {}

    /**
     * Where the notch was found.
     *
     * @param turns out of the face; negative when under it
     * @param more turns to tap deeper until it is flush; none when it is already deep enough
     * @param overSize of the hole
     */
    public record Standing(Length off, double turns, double more, Length moreDepth, Length overSize, Verdict verdict) {}

    /** How well a stand-off is seen with a rule or by turning back to flush: common practice. */
    private static final double EIGHTH_TURN = 0.125;

    /** Empty for parallel threads. */
    static Optional<TaperPlug> of(CallOut callOut, @Nullable Length standOff, Pen pen) {
        Optional<Taper> taper = callOut.taper(Pen.NONE);
        if (taper.isEmpty() && standOff != null) {
            throw new OutOfRange(
                    "standoff",
                    standOff.words(),
                    "asked of a taper thread, as 1/2-14 NPT or Rc 1/2",
                    "gauge a parallel thread by GO and NOT GO");
        }
        return taper.map(each -> of(callOut, each, standOff, pen));
    }

    private static TaperPlug of(CallOut callOut, Taper taper, @Nullable Length standOff, Pen pen) {
        Taper.Turns allowed = taper.turns();
        Taper.Plane plane = taper.planes().stream()
                .filter(each -> each.at().equals(allowed.handTight()))
                .findFirst()
                .orElseThrow();
        double notch = pen.write(NOTCH, allowed.handTight().mm());
        double E_n = pen.write(AT_NOTCH, plane.pitch().mm());
        double p_t = pen.write(PER_TURN, callOut.thread().pitch().mm());
        double k_t = pen.write(PER_LENGTH, taper.perLength());
        double growth = pen.write(GROWTH, p_t * k_t);
        double n_out = pen.write(OUT, allowed.minus());
        double n_in = pen.write(IN, allowed.plus());
        double out = pen.write(OUT_LENGTH, n_out * p_t);
        double in = pen.write(IN_LENGTH, 0 - n_in * p_t);
        Turn turn = new Turn(Length.ofMm(p_t), Length.ofMm(growth));
        Standing found = standOff == null ? null : standing(standOff, turn, allowed, taper.perLength(), pen);
        return new TaperPlug(Length.ofMm(notch), Length.ofMm(E_n), turn, Limits.ofMm(in, out), found);
    }

    private static Standing standing(Length off, Turn turn, Taper.Turns allowed, double k_t, Pen pen) {
        double s = pen.write(STAND_OFF, off.mm());
        double p_t = turn.depth().mm();
        double turns = pen.write(TURNS, s / p_t);
        double more = pen.write(TO_GO, Math.max(0, s / p_t));
        double depth = pen.write(TO_GO_LENGTH, more * p_t);
        double size = pen.write(SIZE, 0 - s * k_t);
        Verdict verdict =
                Verdict.by(allowed.minus() - turns, EIGHTH_TURN).and(Verdict.by(allowed.plus() + turns, EIGHTH_TURN));
        return new Standing(off, turns, more, Length.ofMm(depth), Length.ofMm(size), verdict);
    }

    private static Rule table(String symbol, String unit, String means) {
        return Rule.table(
                symbol, unit, Source.of("derived", "gauge planes and turns of the thread"), Trust.DERIVED, means);
    }

    private static Rule rule(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, DEPTH, Trust.DERIVED, means);
    }
}
