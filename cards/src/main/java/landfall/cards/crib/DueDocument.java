// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cost.Sittings;
import landfall.fault.Caution;
import landfall.quantity.Band;
import landfall.quantity.UnitSystem;
import landfall.wear.Due;
import landfall.wear.Job;
import landfall.wear.Records;
import landfall.wear.Survival;
import landfall.wear.WearRules;
import landfall.working.Rule;
import landfall.working.Step;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** When taps are due for sharpening, as an answer: one tap, or all of a crib. */
public final class DueDocument {
    private static final String ONE = "due";
    private static final String ALL = "due-taps";

    private DueDocument() {}

    /** @param job the next one, null where none is asked about */
    public static Document of(ShopLaws.Found found, @Nullable Job job) {
        Worked<Due> due = found.due();
        Set<Step> steps = new LinkedHashSet<>(due.steps());
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("mark", found.tap().mark()));
        items.add(new Item.Text("callout", found.tap().callOut().normal()));
        items.add(new Item.Text("material", found.material().id()));
        items.addAll(due(due.value(), found.run().about()));
        items.add(Item.Figure.of("depth", due.value().depth(), rule(steps, "L_u")));
        if (job != null) {
            Worked<Survival> survival = found.survival(job);
            steps.addAll(survival.steps());
            items.add(job(job, survival.value()));
        }
        Records records = found.law().records();
        items.add(new Item.Count("runs", records.runs()));
        items.add(new Item.Count("known", records.known()));
        UnitSystem units = found.tap().callOut().thread().family().system();
        return new Document(
                ONE,
                found.tap().mark(),
                units,
                items,
                List.copyOf(steps),
                found.law().cautions());
    }

    static List<Item> due(Due due, boolean about) {
        Item used = about
                ? band("used", due.used(), WearRules.USED_LOW, WearRules.USED, WearRules.USED_HIGH)
                : new Item.Figure("used", due.used().expected(), Unit.HOLES, WearRules.USED);
        return List.of(
                new Item.Text("when", when(due)),
                left(due, about),
                used,
                band("life", due.life(), WearRules.LIFE_LOW, WearRules.LIFE, WearRules.LIFE_HIGH));
    }

    private static Item left(Due due, boolean about) {
        return about
                ? band("left", due.left(), WearRules.LEFT_LOW_ABOUT, WearRules.LEFT, WearRules.LEFT_HIGH_ABOUT)
                : band("left", due.left(), WearRules.LEFT_LOW, WearRules.LEFT, WearRules.LEFT_HIGH);
    }

    static Item job(Job job, Survival survival) {
        return Item.Group.of(
                "job",
                new Item.Count("holes", job.holes()),
                new Item.Figure("lasts", survival.lasts(), Unit.PURE, WearRules.MAY_LAST),
                new Item.Figure("due", survival.due(), Unit.PURE, WearRules.MAY_BE_DUE),
                new Item.Figure("breaks", survival.breaks(), Unit.PURE, WearRules.MAY_BREAK));
    }

    /**
     * Every tap found, and the sittings of those that are due or may be.
     *
     * @param taps the one that is due first at the head
     */
    public static Document of(List<ShopLaws.Found> taps, Sittings.Times times, UnitSystem units) {
        return of(taps, DueBeside.NOTHING, times, units);
    }

    /** The same, with hand sets and gauges. */
    public static Document of(List<ShopLaws.Found> taps, DueBeside beside, Sittings.Times times, UnitSystem units) {
        List<Step> steps = new ArrayList<>();
        List<Item.Group> rows = new ArrayList<>();
        List<Sittings.DueTap> gather = new ArrayList<>();
        Set<Caution> cautions = new LinkedHashSet<>();
        int unset = 0;
        for (ShopLaws.Found found : taps) {
            Worked<Due> due = found.due();
            steps.addAll(due.steps());
            rows.add(row(found, due.value()));
            if (due.value().when() != Due.When.LATER) {
                Sittings.DueTap setUp = found.tap().setUp();
                if (setUp != null) {
                    gather.add(setUp);
                } else {
                    unset++;
                }
            }
        }
        if (unset > 0) {
            cautions.add(new Caution(
                    "setUpNotTold",
                    "Taps whose cards do not tell cam and swivel: " + unset + ". They are in no sitting.",
                    "sittings"));
        }
        cautions.addAll(beside.cautions());
        Worked<Sittings> sittings = Sittings.of(gather, times);
        steps.addAll(sittings.steps());
        List<Item> items = new ArrayList<>();
        items.add(new Item.Count("count", gather.size() + unset));
        items.add(new Item.Rows("taps", rows));
        items.addAll(beside.items());
        items.add(new Item.Rows("sittings", sittings(sittings.value())));
        items.add(minutes("together", sittings.value().together().s(), Sittings.TOGETHER));
        items.add(minutes("singly", sittings.value().singly().s(), Sittings.SINGLY));
        return new Document(ALL, taps.size() + " taps", units, items, steps, List.copyOf(cautions));
    }

    private static Item.Group row(ShopLaws.Found found, Due due) {
        return Item.Group.of(
                "tap",
                new Item.Text("mark", found.tap().mark()),
                new Item.Text("callout", found.tap().callOut().normal()),
                new Item.Text("material", found.material().id()),
                new Item.Text("when", when(due)),
                left(due, found.run().about()),
                new Item.Count("runs", found.law().records().runs()));
    }

    private static List<Item.Group> sittings(Sittings sittings) {
        List<Item.Group> rows = new ArrayList<>();
        for (Sittings.Sitting sitting : sittings.all()) {
            for (Sittings.AtSwivel at : sitting.swivels()) {
                rows.add(Item.Group.of(
                        "sitting",
                        new Item.Count("lobes", sitting.cam().lobes()),
                        new Item.Text("hand", sitting.cam().hand().name().toLowerCase(Locale.ROOT)),
                        new Item.Text(
                                "swivel",
                                String.format(
                                        Locale.ROOT, "%.2f deg", at.swivel().deg())),
                        new Item.Text("marks", String.join(", ", at.marks()))));
            }
        }
        return rows;
    }

    private static Item minutes(String key, double seconds, Rule rule) {
        return new Item.Figure(key, seconds / 60, Unit.MINUTES, rule);
    }

    private static String when(Due due) {
        return when(due.when());
    }

    static String when(Due.When when) {
        return switch (when) {
            case NOW -> "now";
            case PERHAPS -> "perhaps now";
            case LATER -> "later";
        };
    }

    private static Item band(String key, Band band, Rule low, Rule expected, Rule high) {
        return new Item.BandFigure(
                key,
                new Item.Point(band.low(), low),
                new Item.Point(band.expected(), expected),
                new Item.Point(band.high(), high),
                Unit.HOLES);
    }

    private static Rule rule(Set<Step> steps, String symbol) {
        return steps.stream()
                .filter(step -> step.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .rule();
    }
}
