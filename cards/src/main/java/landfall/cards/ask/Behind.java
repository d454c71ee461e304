// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.List;
import java.util.Set;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Step;

/**
 * Finds the step behind a figure, so that an answer can name it. A figure without a step that has its value is a fault
 * of ours and not shown.
 */
final class Behind {
    private static final double RELATIVE = 1e-9;

    private final List<Step> steps;

    Behind(List<Step> steps) {
        this.steps = steps;
    }

    /** The figure under a key, made by the step with the symbol. */
    Item.Figure figure(String key, Length length, String... symbols) {
        return figure(key, length.mm(), Unit.LENGTH, symbols);
    }

    Item.Figure figure(String key, Angle angle, String... symbols) {
        return figure(key, angle.deg(), Unit.ANGLE, symbols);
    }

    Item.Figure figure(String key, double held, Unit unit, String... symbols) {
        return new Item.Figure(key, held, unit, step(held, unit, symbols).rule());
    }

    Item.Point point(double held, Unit unit, String... symbols) {
        return new Item.Point(held, step(held, unit, symbols).rule());
    }

    /** The last step that has one of the symbols and the value. */
    private Step step(double held, Unit unit, String... symbols) {
        Set<String> named = Set.of(symbols);
        for (int i = steps.size() - 1; i >= 0; i--) {
            Step step = steps.get(i);
            if (named.contains(step.symbol()) && agrees(step, held, unit)) {
                return step;
            }
        }
        throw new IllegalStateException("no step " + named + " with the value " + held + " in the working");
    }

    /** Whether a step has a value, the step's unit allowed for. */
    static boolean agrees(Step step, double held, Unit unit) {
        double factor = unit.heldPer(step.rule().unit());
        return Math.abs(step.value() * factor - held) <= RELATIVE * Math.abs(held) + 1e-12;
    }
}
