// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cost.Saved;
import landfall.cost.Shelf;
import landfall.quantity.Money;
import landfall.quantity.UnitSystem;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Step;
import landfall.working.Trust;

/** What to buy, and what sharpening saved, as an answer. */
public final class StockDocument {
    private static final Source NOTE = Source.of("derived", "docs/methods/cost-per-hole.md");
    /** Rows that a page shows. */
    private static final int MOST = 60;

    private final Stock stock;
    private final List<Step> steps = new ArrayList<>();

    private StockDocument(Stock stock) {
        this.stock = stock;
    }

    public static Document of(Stock stock) {
        return new StockDocument(stock).document();
    }

    private Document document() {
        List<Item> items = new ArrayList<>();
        if (!stock.currency().isEmpty()) {
            items.add(new Item.Text("currency", stock.currency()));
        }
        items.add(new Item.Count("short", stock.buy().size()));
        items.add(new Item.Count("enough", stock.enough()));
        items.add(new Item.Rows(
                "buy", stock.buy().stream().limit(MOST).map(this::buy).toList()));
        if (!stock.saved().isEmpty()) {
            items.add(new Item.Rows(
                    "kinds", stock.saved().stream().map(this::kind).toList()));
            items.add(saved());
        }
        if (!stock.wanting().isEmpty()) {
            items.add(new Item.Lines("wanting", stock.wanting()));
        }
        return new Document("stock", "taps", UnitSystem.METRIC, items, List.copyOf(steps), stock.cautions());
    }

    private Item.Group buy(Stock.ToBuy one) {
        Shelf shelf = one.shelf().value();
        steps.addAll(one.shelf().steps());
        List<Item> items = new ArrayList<>(List.of(
                new Item.Text("callout", one.shelved().size()),
                new Item.Count("onHand", one.shelved().onHand()),
                new Item.Count("usedUp", one.shelved().usedUp()),
                new Item.Figure("lasts", shelf.lasts().s() / (7 * 86400), Unit.WEEKS, rule("T_l")),
                new Item.Figure("missing", 100 * shelf.risk(), Unit.SHARE, percent(shelf.risk())),
                new Item.Count("order", shelf.order())));
        Money price = shelf.price();
        if (price != null) {
            items.add(new Item.Figure("price", price.amount(), Unit.MONEY, rule("p_o")));
        }
        return new Item.Group("buy", items);
    }

    /** The chance as a share of a hundred. */
    private Rule percent(double chance) {
        Rule rule = new Rule("p_100", "100*p_s", "%", NOTE, Trust.ESTIMATE, "chance that a tap is missing");
        steps.add(new Step(rule, 100 * chance));
        return rule;
    }

    private Item.Group kind(Stock.OfKind one) {
        Saved saved = one.saved().value();
        steps.addAll(one.saved().steps());
        return Item.Group.of(
                "kind",
                new Item.Text("callout", one.size()),
                new Item.Count("sharpenings", saved.sharpenings()),
                new Item.Count("holes", Math.toIntExact(saved.holes())),
                new Item.Figure("money", saved.money().amount(), Unit.MONEY, rule("G_y")));
    }

    private Item saved() {
        int times = 0;
        double money = 0;
        for (Stock.OfKind one : stock.saved()) {
            times += one.saved().value().sharpenings();
            money += one.saved().value().money().amount();
        }
        Rule sum = Rule.learned("G_all", "money", NOTE, "what sharpening saved, all kinds together");
        steps.add(new Step(sum, money));
        return Item.Group.of(
                "saved",
                new Item.Count("sharpenings", times),
                new Item.Count("unpriced", stock.unpriced()),
                new Item.Figure("money", money, Unit.MONEY, sum));
    }

    private Rule rule(String symbol) {
        return CostItems.rule(steps, symbol);
    }
}
