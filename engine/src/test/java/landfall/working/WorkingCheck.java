// SPDX-License-Identifier: Apache-2.0
package landfall.working;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Holds printed formulas and code together: every formula, worked out with the figures of the steps before it, must
 * give the figure that the code recorded.
 */
public final class WorkingCheck {
    /** Room for the last digits of doubles that were added in another order; nothing a person could measure. */
    private static final double RELATIVE = 1e-9;

    private static final double ABSOLUTE = 1e-12;

    private WorkingCheck() {}

    /**
     * Fails with every formula that parts from its figure, asks for a symbol not written yet, or changes its unit. A
     * figure may be written again with another value: formulas after it take the latest.
     */
    public static void everyFormulaGivesItsFigure(List<Step> steps) {
        List<String> wrong = findings(steps);
        if (!wrong.isEmpty()) {
            throw new AssertionError(
                    wrong.size() + " of " + steps.size() + " steps do not hold:\n  " + String.join("\n  ", wrong));
        }
    }

    /** What hinders reading a rule's formula, whatever the figures; empty when nothing does. */
    public static Optional<String> unreadable(Rule rule) {
        if (!rule.isComputed()) {
            return Optional.empty();
        }
        try {
            FormulaEvaluator.evaluate(rule.formula(), symbol -> 1.0);
            return Optional.empty();
        } catch (FormulaEvaluator.Unreadable e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    static List<String> findings(List<Step> steps) {
        List<String> wrong = new ArrayList<>();
        if (steps.isEmpty()) {
            wrong.add("there are no steps at all");
        }
        Map<String, Double> before = new HashMap<>();
        Map<String, String> units = new HashMap<>();
        for (Step step : steps) {
            if (!Double.isFinite(step.value())) {
                wrong.add(step.symbol() + " is recorded as " + step.value());
            }
            if (step.rule().isComputed()) {
                compare(step, before, wrong);
            }
            before.put(step.symbol(), step.value());
            String earlier = units.put(step.symbol(), step.rule().unit());
            if (earlier != null && !earlier.equals(step.rule().unit())) {
                wrong.add("symbol " + step.symbol() + " is in " + earlier + " and in "
                        + step.rule().unit());
            }
        }
        return wrong;
    }

    private static void compare(Step step, Map<String, Double> before, List<String> wrong) {
        double worked;
        try {
            worked = FormulaEvaluator.evaluate(step.rule().formula(), before::get);
        } catch (FormulaEvaluator.Unreadable e) {
            wrong.add(step.symbol() + ": " + e.getMessage());
            return;
        }
        double room = Math.max(ABSOLUTE, RELATIVE * Math.abs(step.value()));
        // written so that a formula that gives no number fails too
        if (!(Math.abs(worked - step.value()) <= room)) {
            wrong.add("%s = %s gives %s, but %s is recorded (%s), with %s"
                    .formatted(
                            step.symbol(),
                            step.rule().formula(),
                            worked,
                            step.value(),
                            step.rule().source().words(),
                            new TreeMap<>(before)));
        }
    }
}
