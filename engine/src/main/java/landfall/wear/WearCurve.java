// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * The wear land of one tap over the holes since it was sharp: {@code w_due n/N}, as the law has wear grow with the
 * thread cut. The band is that of its life: eight in ten lie inside.
 *
 * @param due when the tap is due
 * @param limit wear land at which it is
 * @param points from sharp on, evenly apart, to the holes by which nine in ten such taps are due
 * @param seen wear lands that were measured since it was sharp
 */
public record WearCurve(Due due, Length limit, List<Point> points, List<Seen> seen) {
    private static final Source NOTE = Source.of("derived", "docs/methods/wear-law.md");
    static final Rule LIMIT = Rule.given("w_due", "mm", "wear land at which taps of this size are sharpened");
    public static final Rule AT = Rule.given("n_x", "1", "holes since it was sharp that are looked at");
    public static final Rule LOW = wear("w_l", "w_due*n_x/N_h", "wear land then, low");
    public static final Rule EXPECTED = wear("w_x", "w_due*n_x/N", "wear land then");
    public static final Rule HIGH = wear("w_h", "w_due*n_x/N_l", "wear land then, high");
    private static final int STEPS = 8;

    /** @param holes since sharp, of the usual depth; expected, so not a whole number */
    public record Point(double holes, Length low, Length expected, Length high) {}

    /** @param holes since sharp, of the usual depth */
    public record Seen(double holes, Length land) {}

    public WearCurve {
        points = List.copyOf(points);
        seen = List.copyOf(seen);
    }

    private static Rule wear(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "mm", NOTE, Trust.ESTIMATE, means);
    }

    static WearCurve of(Due due, Length limit, List<Seen> seen, Pen pen) {
        double w = pen.write(LIMIT, limit.mm());
        double most = Math.max(due.life().high(), due.used().high());
        double step = Math.max(1, Math.ceil(most / STEPS));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double n = pen.write(AT, i * step);
            points.add(new Point(
                    n,
                    Length.ofMm(pen.write(LOW, w * n / due.life().high())),
                    Length.ofMm(pen.write(EXPECTED, w * n / due.life().expected())),
                    Length.ofMm(pen.write(HIGH, w * n / due.life().low()))));
        }
        return new WearCurve(due, limit, points, seen);
    }
}
