// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import java.util.Optional;
import landfall.quantity.Length;
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
public record Reach(Length depth, boolean shankEnters, Blank blank) {
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
                : Rule.table(symbol, "mm", Source.of("uscti-302", "or tap-maker-din-blanks"), Trust.HANDBOOK, means);
    }

    static Optional<Reach> of(ScrewThread thread, boolean byHand, Pen pen) {
        return Blank.of(thread, byHand).map(blank -> of(thread, blank, pen));
    }

    private static Reach of(ScrewThread thread, Blank blank, Pen pen) {
        boolean mem = blank.remembered();
        Blank.Size size = blank.size();
        double hole = pen.write(MINOR, thread.minorDiameter().mm());
        double shank = pen.write(mem ? SHANK_REMEMBERED : SHANK, size.shank().mm());
        double length =
                pen.write(mem ? THREAD_REMEMBERED : THREAD, size.thread().mm());
        double overall =
                pen.write(mem ? OVERALL_REMEMBERED : OVERALL, size.overall().mm());
        double square =
                pen.write(mem ? SQUARE_REMEMBERED : SQUARE, size.square().mm());
        boolean enters = shank < hole;
        return new Reach(Length.ofMm(pen.write(REACH, enters ? overall - square : length)), enters, blank);
    }
}
