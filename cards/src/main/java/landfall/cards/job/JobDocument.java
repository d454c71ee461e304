// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.choice.Ranked;
import landfall.choice.Unfit;
import landfall.cut.Pace;
import landfall.hole.DepthStack;
import landfall.quantity.Band;
import landfall.quantity.UnitSystem;
import landfall.route.BandRule;
import landfall.route.GaugeOnHand;
import landfall.route.HoleLine;
import landfall.route.Operation;
import landfall.route.Planned;
import landfall.route.Route;
import landfall.route.Shortage;
import landfall.route.TapPick;
import landfall.route.Timed;
import landfall.route.Totals;
import landfall.wear.WearRules;
import landfall.working.Rule;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** A job for programs. */
public final class JobDocument {
    private static final String NOUN = "job";

    private JobDocument() {}

    public static Document of(JobState job, Worked<Route> worked) {
        Route route = worked.value();
        List<Item> items = new ArrayList<>();
        if (!job.number().isEmpty()) {
            items.add(new Item.Text("number", job.number()));
        }
        items.add(new Item.Text("name", job.card().name()));
        items.add(new Item.Rows("shortages", rows(route.shortages(), JobDocument::shortage)));
        items.add(new Item.Rows(
                "holes",
                rows(
                        route.holes(),
                        planned -> hole(planned, job.done(planned.line().line())))));
        List<Item.Group> operations = new ArrayList<>();
        route.operations().forEach(one -> operations.add(operation(operations.size() + 1, one)));
        items.add(new Item.Rows("operations", operations));
        items.add(minutes("time", route.totals().time()));
        items.add(new Item.Group("cost", cost(route.totals())));
        if (!job.number().isEmpty()) {
            items.add(new Item.Rows("done", rows(job.done(), JobDocument::done)));
        }
        return new Document(NOUN, subject(job), units(route), items, worked.steps(), route.cautions());
    }

    private static String subject(JobState job) {
        return (job.number() + " " + job.card().name()).strip();
    }

    /** That of the first call-out. */
    public static UnitSystem units(Route route) {
        return route.holes().get(0).line().callOut().thread().family().system();
    }

    private static <T> List<Item.Group> rows(List<T> all, Function<T, Item.Group> row) {
        return all.stream().map(row).toList();
    }

    private static Item.Group shortage(Shortage shortage) {
        return Item.Group.of(
                "shortage",
                new Item.Text("kind", shortage.kind().code()),
                new Item.Lines("lines", numbers(shortage.lines())),
                new Item.Text("says", shortage.says()),
                new Item.Text("mend", shortage.mend()));
    }

    private static List<String> numbers(List<Integer> lines) {
        return lines.stream().map(String::valueOf).toList();
    }

    private static Item.Group hole(Planned planned, long done) {
        HoleLine line = planned.line();
        DepthStack depth = planned.depth();
        List<Item> items = new ArrayList<>();
        items.add(new Item.Count("line", line.line()));
        items.add(new Item.Text("label", line.named().label()));
        items.add(new Item.Text("callout", line.callOut().normal()));
        items.add(new Item.Text("material", line.material().id()));
        items.add(Item.Figure.of("depth", depth.fullThread(), DepthStack.DEPTH));
        items.add(new Item.Text("kind", line.place().end().code()));
        items.add(new Item.Count("count", line.count()));
        items.add(new Item.Count("done", (int) done));
        var drill = planned.hole().tools().drill();
        items.add(Item.Group.of(
                "drill",
                new Item.Text("name", drill.drill().called()),
                Item.Figure.of(
                        "diameter", drill.drill().diameter(), drill.rules().diameter()),
                Item.Figure.of("depth", depth.drill(), DepthStack.DRILL),
                new Item.Flag("inside", drill.inside())));
        items.add(new Item.Group("tap", tap(planned)));
        items.add(new Item.Group("gauge", gauge(planned)));
        items.add(band("speed", planned.work().tempo().speed(), SPEED, Unit.SPEED));
        items.add(new Item.Figure("spindle", planned.work().tempo().spindle().revPerMin(), Unit.TURNING, Pace.SPINDLE));
        if (!line.named().note().isEmpty()) {
            items.add(new Item.Text("note", line.named().note()));
        }
        return new Item.Group("hole", items);
    }

    private static final BandRule SPEED = new BandRule(Pace.SPEED_LOW, Pace.SPEED, Pace.SPEED_HIGH);

    private static List<Item> tap(Planned planned) {
        TapPick tap = planned.tap();
        Ranked chosen = tap.chosen();
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("mark", chosen == null ? "" : chosen.tap().mark()));
        items.add(new Item.Text("what", tap.key()));
        items.add(new Item.Text("limit", tap.advice().limit().words()));
        items.add(new Item.Flag("sharpenFirst", tap.sharpenFirst()));
        items.add(new Item.Count("lastsFor", tap.ahead().job().holes()));
        items.add(chance("lasts", tap.ahead().survival().lasts(), WearRules.MAY_LAST));
        items.add(chance("due", tap.ahead().survival().due(), WearRules.MAY_BE_DUE));
        items.add(chance("breaks", tap.ahead().survival().breaks(), WearRules.MAY_BREAK));
        items.add(new Item.Rows("onRecord", rows(tap.ofTheThread(), JobDocument::ranked)));
        items.add(new Item.Count(
                "ofOtherThreads", tap.ranked().size() - tap.ofTheThread().size()));
        return items;
    }

    private static Item chance(String key, double chance, Rule rule) {
        return new Item.Figure(key, chance, Unit.PURE, rule);
    }

    private static Item.Group ranked(Ranked one) {
        return Item.Group.of(
                "tap",
                new Item.Text("mark", one.tap().mark()),
                new Item.Flag("fit", one.isFit()),
                new Item.Lines(
                        "unfit",
                        one.unfit().stream().map(unfit -> unfit.why().code()).toList()),
                new Item.Lines("why", one.unfit().stream().map(Unfit::says).toList()),
                new Item.Lines("reasons", one.words().reasons()),
                new Item.Lines("cautions", one.words().cautions()));
    }

    private static List<Item> gauge(Planned planned) {
        return List.of(
                new Item.Text("callout", planned.gauge().wanted()),
                new Item.Text("go", name(planned.gauge().go())),
                new Item.Text("notGo", name(planned.gauge().notGo())),
                new Item.Lines(
                        "lack",
                        planned.gauge().lack().stream().map(lack -> lack.says()).toList()));
    }

    private static String name(@Nullable GaugeOnHand gauge) {
        return gauge == null ? "" : gauge.name();
    }

    private static Item.Group operation(int number, Operation operation) {
        return Item.Group.of(
                "operation",
                new Item.Count("number", number),
                new Item.Text("kind", operation.kind().code()),
                new Item.Text("what", operation.what()),
                new Item.Text(
                        "lines", operation.lines().stream().map(String::valueOf).collect(Collectors.joining(", "))),
                minutes("time", operation.time()),
                new Item.Text("why", operation.why()));
    }

    private static Item minutes(String key, Timed timed) {
        return band(key, timed.minutes(), timed.rule(), Unit.MINUTES);
    }

    private static Item band(String key, Band band, BandRule rule, Unit unit) {
        return new Item.BandFigure(
                key,
                new Item.Point(band.low(), rule.low()),
                new Item.Point(band.expected(), rule.expected()),
                new Item.Point(band.high(), rule.high()),
                unit);
    }

    private static List<Item> cost(Totals totals) {
        List<Item> items = new ArrayList<>();
        Totals.Cost work = totals.work();
        items.add(new Item.Text("currency", work == null ? "" : work.currency()));
        cost("work", work, items);
        cost("taps", totals.taps(), items);
        cost("all", totals.all(), items);
        return items;
    }

    private static void cost(String key, Totals.@Nullable Cost cost, List<Item> items) {
        if (cost != null) {
            items.add(band(key, cost.amount(), cost.rule(), Unit.MONEY));
        }
    }

    private static Item.Group done(DoneMark mark) {
        return Item.Group.of(
                "done",
                new Item.Count("line", mark.line()),
                new Item.Text("tap", mark.tap().mark()),
                new Item.Text("event", String.valueOf(mark.tap().seq())),
                new Item.Count("count", mark.count()),
                new Item.Text("at", mark.said().at().toString()),
                new Item.Text("by", mark.said().by()),
                new Item.Flag("takenBack", mark.takenBack()));
    }
}
