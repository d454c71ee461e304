// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.UnitSystem;
import landfall.spread.Along;
import landfall.spread.Law;
import landfall.spread.Moments;
import landfall.spread.Summary;

/**
 * A result at one step of a field, everything else varying.
 *
 * @param value in the middle of the step, or the choice itself
 * @param text of it, as it would be typed
 * @param inside how many lie within the limits
 */
public record AlongPoint(Watched watched, Varied varied, double value, String text, Moments moments, long inside) {
    /** By result, by field, along the field; steps without a set-up are left out. */
    public static List<AlongPoint> of(SpreadSetup setup, Summary summary) {
        List<AlongPoint> all = new ArrayList<>();
        for (int result = 0; result < setup.watched().size(); result++) {
            for (int input = 0; input < setup.varied().size(); input++) {
                all.addAll(of(setup.watched().get(result), setup.varied().get(input), summary.along(result, input)));
            }
        }
        return all;
    }

    public static List<AlongPoint> of(Watched watched, Varied varied, Along along) {
        List<AlongPoint> all = new ArrayList<>();
        for (int step = 0; step < along.steps(); step++) {
            if (along.moments(step).count() > 0) {
                double value = value(varied.law(), step, along.steps());
                all.add(new AlongPoint(
                        watched, varied, value, text(varied, value), along.moments(step), along.inside(step)));
            }
        }
        return all;
    }

    private static String text(Varied varied, double value) {
        return varied.isChoice() ? varied.text(value) : Places.whole(value, varied.unit(), UnitSystem.METRIC);
    }

    private static double value(Law law, int step, int steps) {
        return law instanceof Law.Choices choices && choices.values().size() == steps
                ? choices.values().get(step)
                : law.at((step + 0.5) / steps);
    }
}
