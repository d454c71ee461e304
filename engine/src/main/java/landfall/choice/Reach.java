// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.tap.blank.TapBlank;
import landfall.thread.Family;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * How deep the tap of a usual blank reaches: its thread alone where the shank is thicker than the hole, else up to the
 * square. A neck behind the thread is not counted: a lower bound.
 *
 * @param depth of the point, from the face
 * @param shankEnters whether the shank passes the hole
 */
public record Reach(Length depth, boolean shankEnters, TapBlank blank) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/tap-choice.md, reach");

    static final Rule MINOR = Rule.table(
            "D_1h", "mm", Source.of("iso-68-1", "basic profile"), Trust.HANDBOOK, "basic minor diameter of the hole");
    static final Rule SHANK = blank("d_sh", false, "diameter of the shank");
    static final Rule SHANK_REMEMBERED = blank("d_sh", true, "diameter of the shank");
    static final Rule THREAD = blank("l_th", false, "length of thread and chamfer of the blank");
    static final Rule THREAD_REMEMBERED = blank("l_th", true, "length of thread and chamfer of the blank");
    static final Rule OVERALL = blank("l_oa", false, "overall length of the blank");
    static final Rule OVERALL_REMEMBERED = blank("l_oa", true, "overall length of the blank");
    static final Rule SQUARE = blank("l_sq", false, "length of the square");
    static final Rule SQUARE_REMEMBERED = blank("l_sq", true, "length of the square");
    static final Rule REACH = new Rule(
            "l_r", "if(d_sh < D_1h, l_oa - l_sq, l_th)", "mm", GEOMETRY, Trust.ESTIMATE, "reach of thread and shank");

    private static Rule blank(String symbol, boolean remembered, String means) {
        return remembered
                ? Rule.table(symbol, "mm", Source.of("memory", "ISO 529; inch blanks"), Trust.ESTIMATE, means)
                : Rule.table(symbol, "mm", Source.of("uscti-302", "and din-371"), Trust.HANDBOOK, means);
    }

    /** Blanks are listed for these; a pipe, power or insert tap of the same diameter has another one. */
    private static final Set<Family> LISTED = Set.of(Family.UNIFIED, Family.UNJ, Family.METRIC, Family.MJ);

    /** For a machine the long metric blank where it is held. */
    static Optional<Reach> of(ScrewThread thread, boolean byHand, Pen pen) {
        if (!LISTED.contains(thread.family())) {
            return Optional.empty();
        }
        boolean inch = thread.family().system() == UnitSystem.INCH;
        List<TapBlank> fitting = TapBlank.of(thread.major()).stream()
                .filter(blank -> blank.list().startsWith("USCTI") == inch)
                .toList();
        return fitting.stream()
                .filter(blank -> blank.list().startsWith("DIN") != byHand)
                .findFirst()
                .or(() -> fitting.stream().findFirst())
                .map(blank -> of(thread, blank, pen));
    }

    private static Reach of(ScrewThread thread, TapBlank blank, Pen pen) {
        boolean mem = !blank.read();
        TapBlank.Lengths size = blank.lengths();
        double hole = pen.write(MINOR, thread.minorDiameter().mm());
        double shank = pen.write(mem ? SHANK_REMEMBERED : SHANK, blank.shank().mm());
        pen.write(mem ? THREAD_REMEMBERED : THREAD, size.thread().mm());
        pen.write(mem ? OVERALL_REMEMBERED : OVERALL, size.overall().mm());
        pen.write(mem ? SQUARE_REMEMBERED : SQUARE, size.square().mm());
        boolean enters = shank < hole;
        return new Reach(
                Length.ofMm(pen.write(REACH, blank.reach(Length.ofMm(hole)).mm())), enters, blank);
    }
}
