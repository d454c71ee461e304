// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.List;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.dialling.Fitted;
import landfall.dialling.FittedAngle;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Step;

/**
 * Figures of a dialling-in, each with its step. A fitted figure has no line that a pocket calculator could follow:
 * where the engine wrote none, a step is added that says so.
 */
final class DialFigures {
    private static final Source FIT = Source.of("derived", "docs/methods/dialling.md");

    /** All steps of the answer; grows as figures are made. */
    private final List<Step> steps;

    DialFigures(List<Step> steps) {
        this.steps = steps;
    }

    Item.Figure length(String key, String symbol, Length length, String means) {
        return figure(key, symbol, length.mm(), Unit.LENGTH, means);
    }

    Item.Figure angle(String key, String symbol, Angle angle, String means) {
        return figure(key, symbol, angle.deg(), Unit.ANGLE, means);
    }

    Item.Figure figure(String key, String symbol, double held, Unit unit, String means) {
        return new Item.Figure(key, held, unit, rule(held, unit, symbol, means));
    }

    /** A figure that the person typed. */
    Item.Figure given(String key, String symbol, double held, Unit unit, String means) {
        Rule rule = Rule.given(symbol, unit.sign(UnitSystem.METRIC), means);
        steps.add(new Step(rule, held));
        return new Item.Figure(key, held, unit, rule);
    }

    Item fitted(String key, String symbol, Fitted fitted, String means) {
        return fitted(key, symbol, three(fitted), Unit.LENGTH, means);
    }

    Item slope(String key, String symbol, Fitted fitted, String means) {
        return fitted(key, symbol, three(fitted), Unit.LENGTH_PER_RADIAN, means);
    }

    Item fitted(String key, String symbol, FittedAngle fitted, String means) {
        double[] three = {
            fitted.value().deg(), fitted.standard().deg(), fitted.uncertainty().deg()
        };
        return fitted(key, symbol, three, Unit.ANGLE, means);
    }

    private static double[] three(Fitted fitted) {
        return new double[] {
            fitted.value().mm(), fitted.standard().mm(), fitted.uncertainty().mm()
        };
    }

    private Item fitted(String key, String symbol, double[] three, Unit unit, String means) {
        return new Item.FittedFigure(
                key,
                new Item.Point(three[0], rule(three[0], unit, symbol, means)),
                new Item.Point(three[1], rule(three[1], unit, "u_" + symbol, means + ": standard uncertainty")),
                new Item.Point(three[2], rule(three[2], unit, "U_" + symbol, means + ": expanded uncertainty, 95 %")),
                unit);
    }

    /** The rule of a step with this symbol and value; a fitted step is added where the engine wrote none. */
    Rule rule(double held, Unit unit, String symbol, String means) {
        for (Step step : steps) {
            if (step.symbol().equals(symbol) && Behind.agrees(step, held, unit)) {
                return step.rule();
            }
        }
        Rule rule = Rule.fitted(symbol, unit.sign(UnitSystem.METRIC), FIT, means);
        steps.add(new Step(rule, held));
        return rule;
    }
}
