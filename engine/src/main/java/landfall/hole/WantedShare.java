// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.util.Set;
import landfall.quantity.Length;
import landfall.thread.Family;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * The share of thread that is aimed at: what was told, else 75 per cent; 65 in material over 35 HRC, through more than
 * one and a half diameters, and for forming taps; all of it for threads that move or seal by their full depth.
 */
final class WantedShare {
    static final Rule GIVEN = Rule.given("q_w", "%", "share of thread wanted");
    static final Rule USUAL = rule("share of thread wanted: the usual one");
    static final Rule HARD = rule("share of thread wanted: material over 35 HRC");
    static final Rule LONG = rule("share of thread wanted: through over 1.5 diameters");
    static final Rule FORMED = rule("share of thread wanted: forming tap");

    static final Rule FULL = rule("share of thread wanted: all of a thread that moves or seals by its full depth");
    private static final Set<Family> BY_FULL_DEPTH =
            Set.of(Family.ACME, Family.STUB_ACME, Family.TRAPEZOIDAL, Family.R, Family.G);

    private static final double FULL_PERCENT = 100;
    private static final double USUAL_PERCENT = 75;
    private static final double EASED_PERCENT = 65;
    private static final double LONG_DIAMETERS = 1.5;

    private WantedShare() {}

    /** The rule in force, for the figure in an answer. */
    static Rule rule(HoleWish wish) {
        if (wish.tools().share() != null) {
            return GIVEN;
        }
        if (wish.tools().forming()) {
            return FORMED;
        }
        if (BY_FULL_DEPTH.contains(wish.callOut().thread().family())) {
            return FULL;
        }
        if (isHard(wish)) {
            return HARD;
        }
        return wish.through() && diameters(wish) > LONG_DIAMETERS ? LONG : USUAL;
    }

    /** As a fraction. */
    static double of(HoleWish wish, Pen pen) {
        Rule rule = rule(wish);
        Double told = wish.tools().share();
        if (told != null) {
            return pen.write(rule, 100 * told) / 100;
        }
        if (rule.equals(FULL)) {
            return pen.write(rule, FULL_PERCENT) / 100;
        }
        return pen.write(rule, rule.equals(USUAL) ? USUAL_PERCENT : EASED_PERCENT) / 100;
    }

    private static boolean isHard(HoleWish wish) {
        return wish.material() != null && wish.material().isHard();
    }

    /** Engagement over the diameter; 0 when no depth is told. */
    static double diameters(HoleWish wish) {
        Length depth = wish.depth();
        return depth == null ? 0 : depth.over(wish.callOut().thread().major());
    }

    private static Rule rule(String means) {
        return Rule.table(
                "q_w",
                "%",
                Source.of("common-practice", "75 % of thread, 65 % where it is hard"),
                Trust.PRACTICE,
                means);
    }
}
