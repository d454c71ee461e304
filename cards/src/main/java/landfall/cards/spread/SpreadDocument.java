// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.fault.Caution;
import landfall.quantity.UnitSystem;
import landfall.spread.Moments;
import landfall.spread.Proportion;
import landfall.spread.Sensitivity;
import landfall.spread.Summary;
import landfall.spread.Tally;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Step;

/** A run of many set-ups laid out as one answer, under the keys that programs read. */
public final class SpreadDocument {
    private static final Source NOTE = Source.of("derived", "docs/methods/spread.md");
    private static final Source WILSON = Source.of("wilson-1927", "score interval");
    private static final Source JANSEN = Source.of("jansen-1999", "estimators, docs/methods/spread.md");
    private static final double PER_CENT = 100;

    private final SpreadSetup setup;
    private final Summary summary;
    private final List<Step> steps = new ArrayList<>();

    private SpreadDocument(SpreadSetup setup, Summary summary) {
        this.setup = setup;
        this.summary = summary;
    }

    public static Document of(SpreadSetup setup, Summary summary) {
        SpreadDocument document = new SpreadDocument(setup, summary);
        List<Item> items = document.items();
        UnitSystem units = setup.nominal().units();
        return new Document("spread", setup.nominal().subject(), units, items, document.steps, document.cautions());
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("question", setup.wish().question()));
        items.add(new Item.Count("samples", Math.toIntExact(summary.samples())));
        items.add(new Item.Count("of", Math.toIntExact(setup.plan().samples())));
        items.add(new Item.Count("seed", Math.toIntExact(setup.plan().seed())));
        items.add(varied());
        items.add(share("good", Proportion.of(summary.good(), summary.samples())));
        items.add(results());
        items.add(sensitivities());
        items.add(keep());
        items.add(along());
        items.add(refused());
        return items;
    }

    private Item varied() {
        List<Item.Group> rows = new ArrayList<>();
        for (Varied varied : setup.varied()) {
            rows.add(Item.Group.of(
                    "field", new Item.Text("field", varied.path()), new Item.Text("law", varied.typed())));
        }
        return new Item.Rows("varied", rows);
    }

    private Item results() {
        List<Item.Group> rows = new ArrayList<>();
        for (int result = 0; result < setup.watched().size(); result++) {
            Watched watched = setup.watched().get(result);
            Tally tally = summary.results().get(result);
            List<Item> items = new ArrayList<>(List.of(
                    new Item.Text("result", watched.path()),
                    new Item.Text("limits", watched.typed()),
                    figure("nominal", watched.nominal(), watched.unit(), "y_0", "with nothing off")));
            if (tally.moments().count() > 0) {
                spread(items, watched, tally);
            }
            rows.add(new Item.Group("result", items));
        }
        return new Item.Rows("results", rows);
    }

    private void spread(List<Item> items, Watched watched, Tally tally) {
        Moments moments = tally.moments();
        Unit unit = watched.unit();
        items.add(figure("mean", moments.mean(), unit, "y_m", "mean"));
        items.add(figure("deviation", moments.deviation(), unit, "s_y", "standard deviation"));
        items.add(figure("least", moments.least(), unit, "y_min", "least that was met"));
        items.add(figure("low", tally.quantile(0.05), unit, "y_5", "one in twenty lies below"));
        items.add(figure("median", tally.quantile(0.5), unit, "y_50", "half lie below"));
        items.add(figure("high", tally.quantile(0.95), unit, "y_95", "one in twenty lies above"));
        items.add(figure("greatest", moments.greatest(), unit, "y_max", "greatest that was met"));
        items.add(figure("quantileError", tally.frame().width(), unit, "w_y", "width of the counts of quantiles"));
        if (watched.within().isSet()) {
            items.add(share("within", Proportion.of(tally.inside(), summary.samples())));
        }
    }

    private Item sensitivities() {
        List<Item.Group> rows = new ArrayList<>();
        for (SpreadCause cause : SpreadCause.of(setup, summary)) {
            Sensitivity found = cause.found();
            rows.add(Item.Group.of(
                    "cause",
                    new Item.Text("result", cause.watched().path()),
                    new Item.Text("field", cause.varied().path()),
                    sensitivity("first", found.first(), "S_i", "share of the variance by this field alone"),
                    sensitivity("firstError", found.firstError(), "s_Si", "standard error of that share"),
                    sensitivity("total", found.total(), "S_Ti", "share of the variance that this field has part in"),
                    sensitivity("totalError", found.totalError(), "s_STi", "standard error of that share, total")));
        }
        return new Item.Rows("sensitivities", rows);
    }

    private Item keep() {
        List<Item.Group> rows = new ArrayList<>();
        for (Keep keep : Keep.of(setup, summary)) {
            List<Item> items = new ArrayList<>(List.of(
                    new Item.Text("result", keep.watched().path()),
                    new Item.Text("field", keep.varied().path()),
                    new Item.Flag("all", keep.isAll())));
            if (keep.varied().isChoice()) {
                items.add(new Item.Lines("good", keep.good()));
            } else if (!Double.isNaN(keep.from())) {
                Unit unit = keep.varied().unit();
                items.add(new Item.Range(
                        "values", point(keep.from(), unit, "x_a", "from"), point(keep.to(), unit, "x_b", "to"), unit));
            }
            rows.add(new Item.Group("keep", items));
        }
        return new Item.Rows("keep", rows);
    }

    private Item along() {
        List<Item.Group> rows = new ArrayList<>();
        for (AlongPoint at : AlongPoint.of(setup, summary)) {
            List<Item> items = new ArrayList<>(List.of(
                    new Item.Text("result", at.watched().path()),
                    new Item.Text("field", at.varied().path()),
                    new Item.Text("value", at.text()),
                    new Item.Count("samples", Math.toIntExact(at.moments().count()))));
            Unit unit = at.watched().unit();
            items.add(figure("mean", at.moments().mean(), unit, "y_mi", "mean along the field"));
            items.add(figure("deviation", at.moments().deviation(), unit, "s_yi", "standard deviation there"));
            if (at.watched().within().isSet()) {
                items.add(
                        share("within", Proportion.of(at.inside(), at.moments().count())));
            }
            rows.add(new Item.Group("at", items));
        }
        return new Item.Rows("along", rows);
    }

    private Item refused() {
        List<Item.Group> rows = new ArrayList<>();
        summary.refused()
                .forEach((why, count) -> rows.add(Item.Group.of(
                        "refused", new Item.Text("why", why), new Item.Count("count", Math.toIntExact(count)))));
        return new Item.Rows("refused", rows);
    }

    private Item.Figure figure(String key, double value, Unit unit, String symbol, String means) {
        return new Item.Figure(
                key, value, unit, point(value, unit, symbol, means).rule());
    }

    private Item.Point point(double value, Unit unit, String symbol, String means) {
        Rule rule = Rule.run(symbol, unit.sign(UnitSystem.METRIC), NOTE, means);
        steps.add(new Step(rule, value));
        return new Item.Point(value, rule);
    }

    private Item.Figure sensitivity(String key, double value, String symbol, String means) {
        Rule rule = Rule.run(symbol, "1", JANSEN, means);
        steps.add(new Step(rule, value));
        return new Item.Figure(key, value, Unit.PURE, rule);
    }

    private Item share(String key, Proportion share) {
        return new Item.BandFigure(
                key,
                wilson(share.low(), "p_a", "least share that the count allows, 95 %"),
                wilson(share.share(), "p", "share of all set-ups within the limits"),
                wilson(share.high(), "p_b", "greatest share that the count allows, 95 %"),
                Unit.SHARE);
    }

    private Item.Point wilson(double share, String symbol, String means) {
        Rule rule = Rule.run(symbol, "%", WILSON, means);
        steps.add(new Step(rule, PER_CENT * share));
        return new Item.Point(PER_CENT * share, rule);
    }

    private List<Caution> cautions() {
        List<Caution> cautions = new ArrayList<>();
        if (summary.refusals() > 0) {
            cautions.add(new Caution(
                    "setupsRefused",
                    "%d of %d set-ups cannot be made at all; they count as not good, and are in no mean or spread."
                            .formatted(summary.refusals(), summary.samples()),
                    ""));
        }
        if (summary.samples() < setup.plan().samples()) {
            cautions.add(new Caution(
                    "runStopped",
                    "Stopped after %d of %d set-ups."
                            .formatted(summary.samples(), setup.plan().samples()),
                    ""));
        }
        setup.nominal().cautions().forEach(cautions::add);
        return cautions;
    }
}
