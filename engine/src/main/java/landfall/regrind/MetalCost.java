// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * What the metal costs that a way takes: its share of what there is to lose, and that share of what the tap is worth as
 * it is. Bench minutes and the price of a new tap are another question.
 */
final class MetalCost {
    static final Rule WORTH = Rule.given("p_tap", "money", "worth of the tap as it is");

    private MetalCost() {}

    static Choice.Cost of(Way way, double share, @Nullable Double worth, Pen pen) {
        double percent = pen.write(share(way), 100 * share);
        if (worth == null) {
            return new Choice.Cost(share, null);
        }
        return new Choice.Cost(share, pen.write(money(way), pen.write(WORTH, worth) * percent / 100));
    }

    private static Rule share(Way way) {
        return new Rule(
                shareSymbol(way),
                switch (way) {
                    case CHAMFER -> "100*s_all/(l_t - l_min)";
                    case CUT_OFF -> "100*s_off/(l_t - l_min)";
                    case FACE -> "100*d_f/(θ_L - θ_min)";
                    case SCRAP -> "100";
                },
                "%",
                Counts.GEOMETRY,
                Trust.DERIVED,
                "share of what there is to lose, by way: " + way.code());
    }

    private static Rule money(Way way) {
        return new Rule(
                moneySymbol(way),
                "p_tap*%s/100".formatted(shareSymbol(way)),
                "money",
                Counts.GEOMETRY,
                Trust.DERIVED,
                "worth of the metal that it takes, by way: " + way.code());
    }

    private static String shareSymbol(Way way) {
        return "q_" + way.code().replace("-", "");
    }

    private static String moneySymbol(Way way) {
        return "m_" + way.code().replace("-", "");
    }
}
