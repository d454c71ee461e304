// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.feedback.GoByTurns;
import landfall.feedback.TorqueFeedback;
import landfall.quantity.Band;
import landfall.quantity.UnitSystem;
import landfall.wear.WearCurve;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Step;
import landfall.working.Worked;

/** What the records teach of one tap, as an answer. */
public final class ProspectDocument {
    private static final Rule SEEN_AT = Rule.given("n_m", "1", "holes since it was sharp when it was measured");
    private static final Rule SEEN = Rule.given("w_m", "mm", "wear land as measured");
    private static final Rule TORQUE = Rule.given("T_m", "N·m", "torque as measured");
    private static final String MODEL = "docs/methods/tapping-torque.md";

    private final Prospect prospect;
    private final List<Step> steps = new ArrayList<>();

    private ProspectDocument(Prospect prospect) {
        this.prospect = prospect;
    }

    public static Document of(Prospect prospect) {
        return new ProspectDocument(prospect).document();
    }

    private Document document() {
        ShopLaws.Found found = prospect.found();
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("mark", found.tap().mark()));
        items.add(new Item.Text("callout", found.tap().callOut().normal()));
        items.add(new Item.Text("material", found.material().id()));
        wear(items);
        Prospect.Ahead job = prospect.job();
        if (job != null) {
            steps.addAll(job.survival().steps());
            items.add(DueDocument.job(job.job(), job.survival().value()));
        }
        Costs costs = prospect.costs();
        if (costs != null) {
            items.addAll(new CostItems(costs, steps).items());
        }
        go(items);
        torque(items);
        if (!prospect.wanting().isEmpty()) {
            items.add(new Item.Lines("wanting", prospect.wanting()));
        }
        UnitSystem units = found.tap().callOut().thread().family().system();
        return new Document("prospect", found.tap().mark(), units, items, List.copyOf(steps), prospect.cautions());
    }

    private void wear(List<Item> items) {
        Worked<WearCurve> worked = prospect.curve();
        WearCurve curve = worked.value();
        steps.addAll(worked.steps());
        List<Item> wear = new ArrayList<>(
                DueDocument.due(curve.due(), prospect.found().run().about()));
        wear.add(new Item.Figure("limit", curve.limit().mm(), Unit.LENGTH, rule("w_due")));
        wear.add(new Item.Count("runs", prospect.found().law().records().runs()));
        wear.add(new Item.Count("known", prospect.found().law().records().known()));
        items.add(new Item.Group("wear", wear));
        List<Item.Group> rows = new ArrayList<>();
        for (WearCurve.Point point : curve.points()) {
            rows.add(Item.Group.of(
                    "at",
                    new Item.Figure("holes", point.holes(), Unit.HOLES, WearCurve.AT),
                    new Item.BandFigure(
                            "land",
                            Item.Point.of(point.low(), WearCurve.LOW),
                            Item.Point.of(point.expected(), WearCurve.EXPECTED),
                            Item.Point.of(point.high(), WearCurve.HIGH),
                            Unit.LENGTH)));
        }
        items.add(new Item.Rows("curve", rows));
        if (!curve.seen().isEmpty()) {
            items.add(new Item.Rows("seen", seen(curve)));
        }
    }

    private List<Item.Group> seen(WearCurve curve) {
        List<Item.Group> rows = new ArrayList<>();
        for (WearCurve.Seen seen : curve.seen()) {
            steps.add(new Step(SEEN_AT, seen.holes()));
            steps.add(new Step(SEEN, seen.land().mm()));
            rows.add(Item.Group.of(
                    "seen",
                    new Item.Figure("holes", seen.holes(), Unit.HOLES, SEEN_AT),
                    Item.Figure.of("land", seen.land(), SEEN)));
        }
        return rows;
    }

    private void go(List<Item> items) {
        Worked<GoByTurns> go = prospect.measured().go();
        steps.addAll(go.steps());
        Band chance = go.value().chance();
        items.add(Item.Group.of(
                "go",
                new Item.Count("gauged", go.value().gauged()),
                new Item.Count("went", go.value().went()),
                new Item.BandFigure(
                        "chance",
                        new Item.Point(chance.low(), rule("P_gl")),
                        new Item.Point(chance.expected(), rule("P_g")),
                        new Item.Point(chance.high(), rule("P_gh")),
                        Unit.PURE)));
    }

    private void torque(List<Item> items) {
        Torques torques = prospect.measured().torques();
        if (torques == null) {
            return;
        }
        TorqueFeedback learned = torques.learned().value();
        steps.addAll(torques.learned().steps());
        Band factor = learned.factor();
        items.add(Item.Group.of(
                "torque",
                new Item.Count("measured", torques.cuts().size()),
                new Item.Figure("before", learned.before(), Unit.PURE, rule("b")),
                new Item.Figure("after", learned.band(), Unit.PURE, rule("b_s")),
                new Item.BandFigure(
                        "factor",
                        new Item.Point(factor.low(), rule("K_sl")),
                        new Item.Point(factor.expected(), rule("K_s")),
                        new Item.Point(factor.high(), rule("K_sh")),
                        Unit.PURE)));
        List<Item.Group> rows = new ArrayList<>();
        for (Torques.Cut cut : torques.cuts()) {
            rows.add(cut(cut, learned.narrowed(cut.forecast())));
        }
        items.add(new Item.Rows("torques", rows));
    }

    private Item.Group cut(Torques.Cut cut, Band narrowed) {
        steps.add(new Step(TORQUE, cut.measured().nm()));
        return Item.Group.of(
                "torque",
                new Item.Figure("measured", cut.measured().nm(), Unit.TORQUE, TORQUE),
                band("forecast", cut.forecast(), "f"),
                band("narrowed", narrowed, "s"));
    }

    private Item band(String key, Band band, String index) {
        return new Item.BandFigure(
                key,
                step("T_" + index + "l", "torque, " + key + ", low", band.low()),
                step("T_" + index, "torque, " + key, band.expected()),
                step("T_" + index + "h", "torque, " + key + ", high", band.high()),
                Unit.TORQUE);
    }

    private Item.Point step(String symbol, String means, double value) {
        Rule rule = Rule.learned(symbol, "N·m", Source.of("derived", MODEL), means);
        steps.add(new Step(rule, value));
        return new Item.Point(value, rule);
    }

    /** The rule of the last step with this symbol. */
    private Rule rule(String symbol) {
        return CostItems.rule(steps, symbol);
    }
}
