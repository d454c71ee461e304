// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cards.words.Words;
import landfall.cost.LimitChoice;
import landfall.cost.LimitPoint;
import landfall.cost.NextStep;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Money;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Step;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** What a hole costs against the wear limit, and what to do with the tap: items of an answer, with their steps. */
final class CostItems {
    private static final Source NOTE = Source.of("derived", "docs/methods/cost-per-hole.md");
    private static final Rule LOW =
            Rule.learned("C_l", "money", NOTE, "cost of a hole at the best limit, the wear law's kind end");
    private static final Rule MIDDLE = Rule.learned("C_m", "money", NOTE, "cost of a hole at the best limit");
    private static final Rule HIGH =
            Rule.learned("C_h", "money", NOTE, "cost of a hole at the best limit, the wear law's unkind end");
    private static final Rule FROM =
            Rule.learned("w_from", "mm", NOTE, "least wear limit at which a hole costs at most 5 % more");
    private static final Rule TO =
            Rule.learned("w_to", "mm", NOTE, "greatest wear limit at which a hole costs at most 5 % more");

    private final Costs costs;
    private final List<Step> steps;

    CostItems(Costs costs, List<Step> steps) {
        this.costs = costs;
        this.steps = steps;
    }

    List<Item> items() {
        List<Item> items = new ArrayList<>();
        Worked<NextStep> next = costs.next();
        steps.addAll(next.steps());
        items.add(cost());
        items.add(new Item.Rows("limits", costs.some().stream().map(this::row).toList()));
        items.add(next(next.value()));
        return items;
    }

    private Item cost() {
        LimitChoice choice = costs.choice();
        LimitPoint best = choice.best();
        Limits alike = choice.alike();
        Band band = choice.perHole();
        List<Item> items = new ArrayList<>();
        if (!costs.currency().isEmpty()) {
            items.add(new Item.Text("currency", costs.currency()));
        }
        items.add(new Item.Figure("best", best.limit().mm(), Unit.LENGTH, rule(steps, "w_x")));
        items.add(new Item.Range("alike", end(alike.min(), FROM), end(alike.max(), TO), Unit.LENGTH));
        items.add(new Item.BandFigure(
                "perHole",
                point(LOW, band.low()),
                point(MIDDLE, band.expected()),
                point(HIGH, band.high()),
                Unit.MONEY_A_HOLE));
        return new Item.Group("cost", items);
    }

    private Item.Point end(@Nullable Length length, Rule rule) {
        return point(rule, length == null ? 0 : length.mm());
    }

    private Item.Point point(Rule rule, double value) {
        steps.add(new Step(rule, value));
        return new Item.Point(value, rule);
    }

    private Item.Group row(LimitPoint point) {
        Worked<LimitPoint> worked = LimitChoice.working(costs.law(), costs.bench(), point);
        steps.addAll(worked.steps());
        return Item.Group.of(
                "limit",
                Item.Figure.of("limit", point.limit(), rule(worked.steps(), "w_x")),
                new Item.Figure("perHole", point.perHole().amount(), Unit.MONEY_A_HOLE, rule(worked.steps(), "C")),
                new Item.Figure("spoilt", point.spoilt().amount(), Unit.MONEY_A_HOLE, rule(worked.steps(), "C_b")),
                new Item.Figure("holes", point.holes().aRun(), Unit.HOLES, rule(worked.steps(), "H")),
                new Item.Count("sharpenings", point.sharpenings()));
    }

    private Item next(NextStep next) {
        LimitPoint best = costs.choice().best();
        List<Item> items = new ArrayList<>();
        String code = next.verdict().name().toLowerCase(Locale.ROOT);
        items.add(new Item.Text("verdict", code, Words.of("prospect.verdict." + code)));
        double share = 100 * best.spoilt().amount() / best.perHole().amount();
        items.add(new Item.Text(
                "part",
                Words.of(
                        "prospect.part",
                        String.format(Locale.ROOT, "%.0f", share),
                        String.format(Locale.ROOT, "%.4f", best.spoilt().amount()))));
        items.add(new Item.Count("left", costs.left()));
        items.add(new Item.Figure(
                "perHoleNew",
                next.perHoleNew().amount(),
                Unit.MONEY_A_HOLE,
                rule(costs.next().steps(), "C")));
        Money perHole = next.perHoleNext();
        Money gain = next.gain();
        if (perHole != null && gain != null) {
            items.add(new Item.Figure(
                    "perHoleNext",
                    perHole.amount(),
                    Unit.MONEY_A_HOLE,
                    rule(costs.next().steps(), "C_1")));
            items.add(new Item.Figure(
                    "gain", gain.amount(), Unit.MONEY, rule(costs.next().steps(), "G")));
        }
        return new Item.Group("next", items);
    }

    /** The rule of the last step with this symbol. */
    static Rule rule(List<Step> steps, String symbol) {
        for (int i = steps.size() - 1; i >= 0; i--) {
            if (steps.get(i).symbol().equals(symbol)) {
                return steps.get(i).rule();
            }
        }
        throw new IllegalStateException("no step " + symbol);
    }
}
