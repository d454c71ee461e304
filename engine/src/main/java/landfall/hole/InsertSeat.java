// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.util.Optional;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.CallOut;
import landfall.thread.ScrewThread;
import landfall.thread.insert.InsertCallOut;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * Where a wire insert sits: docs/methods/insert-holes.md. P_0 is the pitch, D_i the nominal diameter of the insert.
 *
 * @param nominal length of the free insert's catalogue: a multiple of D_i
 * @param fitted length when it is wound in
 * @param setDown of its top coil under the face
 * @param fullThread depth of full thread that it needs; as much is the least thickness for a through hole
 * @param drill depth by the standard's sum, for this chamfer
 */
public record InsertSeat(Length nominal, Limits fitted, Limits setDown, Length fullThread, Length drill) {
    private static final Source NOTES = Source.of("asme-b18.29.2m-notes", "depth of thread and drill");

    static final Rule DIAMETER = Rule.given("D_i", "mm", "nominal diameter of the insert");
    static final Rule GIVEN = Rule.given("Q_i", "mm", "nominal length of the insert");
    static final Rule LONGEST = new Rule(
            "Q_i",
            "D_i*if(T_f - P_0 >= 3*D_i, 3, floor(2*(T_f - P_0)/D_i + 0.000000001)/2)",
            "mm",
            NOTES,
            Trust.HANDBOOK,
            "nominal length of the insert: the longest that the thread holds");
    public static final Rule FITTED_LEAST = read("Q_1", "Q_i - 0.75*P_0", "length of the insert when fitted, least");
    public static final Rule FITTED_MOST = read("Q_2", "Q_i - 0.5*P_0", "length of the insert when fitted, greatest");
    public static final Rule DOWN_LEAST = read("s_1", "0.75*P_0", "top coil under the face, least");
    public static final Rule DOWN_MOST = read("s_2", "1.5*P_0", "top coil under the face, greatest");
    public static final Rule THREAD = read("T_i", "Q_i + P_0", "depth of full thread for the insert");
    static final Rule PLUG_SMALL =
            read("T_iq", "Q_i + 0.5*D_i + 6*P_0", "drilled depth for the insert, plug tap, to 8 mm");
    static final Rule PLUG = read("T_iq", "Q_i + 6*P_0", "drilled depth for the insert, plug tap, over 8 mm");
    static final Rule BOTTOMING = read("T_iq", "Q_i + 4*P_0", "drilled depth for the insert, bottoming tap");

    /** To this many threads of chamfer a tap is a bottoming one. */
    private static final double BOTTOMING_THREADS = 2;

    private static final double SMALL_MM = 8;

    /** The diameter of the screw; empty for holes that take no insert. */
    static Optional<Length> diameter(CallOut callOut) {
        return callOut instanceof InsertCallOut insert
                ? Optional.of(insert.nominal().thread().major())
                : Optional.empty();
    }

    /** Depth of full thread that an insert of this length needs. */
    static Length fullThread(Length nominal, ScrewThread thread) {
        return nominal.plus(thread.pitch());
    }

    /** {@code stack} has been written. Empty without a depth, and where not even the shortest insert fits. */
    static Optional<InsertSeat> of(HoleWish wish, @Nullable DepthStack stack, Pen pen) {
        Optional<Length> diameter = diameter(wish.callOut());
        if (diameter.isEmpty() || stack == null) {
            return Optional.empty();
        }
        double D = diameter.get().mm();
        double P = wish.callOut().thread().pitch().mm();
        Length told = wish.place().insert();
        double Q = told != null ? told.mm() : longest(stack.fullThread().mm() - P, D);
        if (Q < D - 1e-9 && told == null) {
            return Optional.empty();
        }
        pen.write(DIAMETER, D);
        if (told == null || wish.place().depth() != null) {
            pen.write(told != null ? GIVEN : LONGEST, Q);
        }
        Limits fitted = Limits.ofMm(pen.write(FITTED_LEAST, Q - 0.75 * P), pen.write(FITTED_MOST, Q - 0.5 * P));
        Limits down = Limits.ofMm(pen.write(DOWN_LEAST, 0.75 * P), pen.write(DOWN_MOST, 1.5 * P));
        double thread = pen.write(THREAD, Q + P);
        double drill = drill(Q, D, P, stack.chamferThreads(), pen);
        return Optional.of(new InsertSeat(Length.ofMm(Q), fitted, down, Length.ofMm(thread), Length.ofMm(drill)));
    }

    private static double drill(double Q, double D, double P, double chamfer, Pen pen) {
        if (chamfer <= BOTTOMING_THREADS) {
            return pen.write(BOTTOMING, Q + 4 * P);
        }
        return D <= SMALL_MM ? pen.write(PLUG_SMALL, Q + 0.5 * D + 6 * P) : pen.write(PLUG, Q + 6 * P);
    }

    /** Of 1, 1.5, 2, 2.5 and 3 diameters. */
    private static double longest(double room, double D) {
        return D * (room >= 3 * D ? 3 : Math.floor(2 * room / D + 1e-9) / 2);
    }

    private static Rule read(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "mm", NOTES, Trust.HANDBOOK, means);
    }
}
