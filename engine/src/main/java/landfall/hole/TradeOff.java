// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.util.ArrayList;
import java.util.List;
import landfall.hole.Strength.Sizes;
import landfall.quantity.Area;
import landfall.quantity.Length;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * What a larger or smaller share of thread costs and gives: engagement to break the screw, and tapping torque against
 * that at the wanted share.
 *
 * <p>Torque goes with the area of the groove times its radius. Over 75 per cent that is a lower bound: rubbing crests
 * and crushed chips come on top (one report has the torque doubled from 60 to 72 per cent in a mild steel, where this
 * says a third more).
 *
 * @param share as a fraction
 * @param engagement to break the screw, equal materials
 * @param torque over that at the wanted share
 * @param chosen whether the chosen drill's share lies nearest to this one
 */
public record TradeOff(double share, Length hole, Length engagement, double torque, boolean chosen, Rules rules) {
    private static final int[] PERCENT = {50, 55, 60, 65, 70, 75, 80};
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/thread-engagement.md, torque");
    private static final Source H28 = Source.of("nbs-h28", "length of engagement of threads");

    /** The formulas of one row. */
    public record Rules(Rule share, Rule hole, Rule engagement, Rule torque) {
        static Rules of(String mark) {
            return new Rules(
                    Rule.table("q" + mark, "%", GEOMETRY, Trust.DERIVED, "share of thread looked at"),
                    new Rule(
                            "D" + mark,
                            "d_0 - t_full*q" + mark + "/100",
                            "mm",
                            GEOMETRY,
                            Trust.DERIVED,
                            "hole of that share"),
                    new Rule(
                            "L" + mark,
                            "2*A_t/(pi*D# * (1/2 + 0.57735*(E_s - D#)/P_0))".replace("#", mark),
                            "mm",
                            H28,
                            Trust.HANDBOOK,
                            "engagement to break the screw in that hole, equal materials"),
                    new Rule(
                            "M" + mark,
                            "m" + mark + "/m_w",
                            "1",
                            GEOMETRY,
                            Trust.ESTIMATE,
                            "torque over that at the wanted share"));
        }

        /** Area of the groove times its radius. */
        static Rule moment(String mark, String share) {
            return new Rule(
                    "m" + mark,
                    "(t_full*#/200)*P_0/8*(d_0 - t_full*#/200)/2 + tan(30)*(t_full*#/200)^2*(d_0/2 - 2/3*t_full*#/200)"
                            .replace("#", share),
                    "mm³",
                    GEOMETRY,
                    Trust.ESTIMATE,
                    "area of the groove times its radius");
        }
    }

    /** {@code wanted} and {@code chosen} are shares; sizes and tensile area have been written. */
    static List<TradeOff> of(ScrewThread thread, Strength strength, double wanted, double chosen, Pen pen) {
        Sizes sizes = strength.sizes();
        Area tensile = strength.tensileArea();
        double full = ShareBasis.FULL_DEPTH.twice(thread, pen).mm();
        double reference = pen.write(Rules.moment("_w", "q_w"), moment(thread, full * wanted / 2));
        List<TradeOff> rows = new ArrayList<>();
        for (int percent : PERCENT) {
            String mark = "_" + percent;
            Rules rules = Rules.of(mark);
            double P = thread.pitch().mm();
            pen.write(rules.share, percent);
            double hole = pen.write(rules.hole, thread.major().mm() - full * percent / 100);
            double engagement = pen.write(rules.engagement, 2 * tensile.mm2() / sizes.external(hole, P));
            double m = pen.write(Rules.moment(mark, "q" + mark), moment(thread, full * percent / 200));
            double torque = pen.write(rules.torque, m / reference);
            rows.add(new TradeOff(
                    percent / 100.0,
                    Length.ofMm(hole),
                    Length.ofMm(engagement),
                    torque,
                    Math.round(chosen * 20) * 5 == percent,
                    rules));
        }
        return List.copyOf(rows);
    }

    /** For a groove of depth t. */
    private static double moment(ScrewThread thread, double t) {
        double d = thread.major().mm();
        return t * thread.pitch().mm() / 8 * (d - t) / 2 + Math.tan(Math.toRadians(30)) * t * t * (d / 2 - 2.0 / 3 * t);
    }
}
