// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import landfall.drill.Drill;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * A drill, and the hole that is to be expected of it.
 *
 * @param share of thread by the drill's own diameter, as a fraction
 * @param expected diameter of the hole, in mm
 * @param inside whether the expected hole lies in the limits asked for
 * @param rules the formulas, with the symbols of this drill
 */
public record Drilled(Drill drill, double share, Band expected, boolean inside, Rules rules) {

    /** What a drill is held against; {@code twice} is the full depth of both sides. */
    record Against(Length major, Length twice, Limits limits) {
        double share(Drill drill) {
            return major.minus(drill.diameter()).over(twice);
        }

        boolean expectedInside(Drill drill) {
            return limits.holds(expected(drill));
        }
    }

    /** The formulas of one drill. Symbols carry a mark, so that several drills can stand in one answer. */
    public record Rules(Rule diameter, Rule share, Rule low, Rule middle, Rule high) {
        private static final Source SERIES = Source.of("drill-size-table", "diameter of the drill");
        private static final Source HOLE = Source.of("derived", "docs/methods/tap-drill.md");

        static Rules of(String mark) {
            String d = "δ" + mark;
            return new Rules(
                    Rule.table(d, "mm", SERIES, Trust.HANDBOOK, "diameter of the drill"),
                    ShareBasis.shareOf("q" + mark, d),
                    hole("_lo" + mark, d, "hole expected of this drill, least"),
                    hole(mark, d, "hole expected of this drill"),
                    hole("_hi" + mark, d, "hole expected of this drill, greatest"));
        }

        private static Rule hole(String mark, String drill, String means) {
            return new Rule("E_x" + mark, drill + " + 25.4*o" + mark, "mm", HOLE, Trust.ESTIMATE, means);
        }
    }

    static Length expected(Drill drill) {
        return drill.diameter().plus(Length.ofInch(Oversize.MEAN.inches(drill.diameter())));
    }

    static Drilled of(Drill drill, Against against, String mark, Pen pen) {
        Rules rules = Rules.of(mark);
        double d = pen.write(rules.diameter, drill.diameter().mm());
        double q = pen.write(rules.share, 100 * (against.major.mm() - d) / against.twice.mm());
        double low = d + Length.MM_PER_INCH * oversize(Oversize.LEAST, drill, "_lo" + mark, mark, pen);
        double middle = d + Length.MM_PER_INCH * oversize(Oversize.MEAN, drill, mark, mark, pen);
        double high = d + Length.MM_PER_INCH * oversize(Oversize.GREATEST, drill, "_hi" + mark, mark, pen);
        Band expected =
                new Band(pen.write(rules.low, low), pen.write(rules.middle, middle), pen.write(rules.high, high));
        return new Drilled(drill, q / 100, expected, against.expectedInside(drill), rules);
    }

    private static double oversize(Oversize table, Drill drill, String mark, String drillMark, Pen pen) {
        return pen.write(table.rule("o" + mark, "δ" + drillMark), table.inches(drill.diameter()));
    }
}
