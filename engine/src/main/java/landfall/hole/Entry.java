// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * The mouth of the hole, and how the depth of thread is gauged.
 *
 * @param countersink diameter to countersink to before tapping
 * @param skew sideways shift of the thread's far end for each degree that it stands out of square; null without a depth
 * @param goTurns turns of the GO plug until it stops, for a thread of full depth; null when no depth is told
 */
public record Entry(
        Limits countersink, @Nullable Length skew, @Nullable Double goTurns) {
    private static final Source PRACTICE = Source.of("common-practice", "countersink 0.1 to 0.2 P a side");
    private static final Source TURNS = Source.of("common-practice", "GO plug turns, less the incomplete first thread");

    public static final Rule LEAST = new Rule(
            "D_c1", "d_0 + 0.2*P_0", "mm", PRACTICE, Trust.PRACTICE, "countersink, least diameter, 90 or 120 deg");
    public static final Rule GREATEST = new Rule(
            "D_c2", "d_0 + 0.4*P_0", "mm", PRACTICE, Trust.PRACTICE, "countersink, greatest diameter, 90 or 120 deg");
    public static final Rule SKEW = new Rule(
            "S_k",
            "T_f*tan(1)",
            "mm",
            Source.of("derived", "docs/methods/tap-drill.md, entry"),
            Trust.DERIVED,
            "sideways shift of the far end for each degree out of square");
    static final Rule LEAD = Rule.given("L_0", "mm", "lead: advance in one turn");
    public static final Rule GO_TURNS = new Rule(
            "N_go",
            "(T_f + P_0)/L_0",
            "1",
            TURNS,
            Trust.PRACTICE,
            "turns of the GO plug to the end of the full thread");

    static Entry of(ScrewThread thread, @Nullable Length depth, Pen pen) {
        double d = thread.major().mm();
        double P = thread.pitch().mm();
        Limits countersink = Limits.ofMm(pen.write(LEAST, d + 0.2 * P), pen.write(GREATEST, d + 0.4 * P));
        if (depth == null) {
            return new Entry(countersink, null, null);
        }
        double L = pen.write(LEAD, thread.lead().perTurn().mm());
        Length skew = Length.ofMm(pen.write(SKEW, depth.mm() * Math.tan(Math.toRadians(1))));
        return new Entry(countersink, skew, pen.write(GO_TURNS, (depth.mm() + P) / L));
    }
}
