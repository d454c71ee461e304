// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import landfall.fault.Caution;
import landfall.quantity.UnitSystem;
import landfall.working.Step;

/**
 * One answer as a small tree, which text, JSON, page and paper are views of.
 *
 * @param noun the question, such as {@code thread}
 * @param subject what it was asked about, as a person would name it
 * @param units the system that figures are shown in
 */
public record Document(
        String noun, String subject, UnitSystem units, List<Item> items, List<Step> working, List<Caution> cautions) {
    public Document {
        items = List.copyOf(items);
        working = List.copyOf(working);
        cautions = List.copyOf(cautions);
    }

    /** The same answer with these cautions before its own. */
    public Document cautionedFirst(List<Caution> first) {
        List<Caution> all = new ArrayList<>(first);
        all.addAll(cautions);
        return new Document(noun, subject, units, items, working, all);
    }

    /** The same answer for a reader of another system of units. */
    public Document in(UnitSystem other) {
        return new Document(noun, subject, other, items, working, cautions);
    }

    /**
     * Visits every item, groups before what they hold, with its path from the noun on: {@code grind.lead.angleMajor}.
     */
    public void walk(BiConsumer<String, Item> visitor) {
        walk(noun, items, visitor);
    }

    private static void walk(String path, List<? extends Item> items, BiConsumer<String, Item> visitor) {
        for (Item item : items) {
            String here = path + "." + item.key();
            visitor.accept(here, item);
            if (item instanceof Item.Group group) {
                walk(here, group.items(), visitor);
            } else if (item instanceof Item.Rows rows) {
                rows.rows().forEach(row -> walk(here, row.items(), visitor));
            }
        }
    }

    /** Every figure with its path: single ones, ends of limits, and the three of a band. */
    public List<Shown> figures() {
        List<Shown> all = new ArrayList<>();
        walk((path, item) -> {
            if (item instanceof Item.Figure figure) {
                all.add(new Shown(path, figure.point(), figure.unit()));
            } else if (item instanceof Item.Range range) {
                if (range.min() != null) {
                    all.add(new Shown(path + ".min", range.min(), range.unit()));
                }
                if (range.max() != null) {
                    all.add(new Shown(path + ".max", range.max(), range.unit()));
                }
            } else if (item instanceof Item.BandFigure band) {
                all.add(new Shown(path + ".low", band.low(), band.unit()));
                all.add(new Shown(path + ".expected", band.expected(), band.unit()));
                all.add(new Shown(path + ".high", band.high(), band.unit()));
            } else if (item instanceof Item.FittedFigure fitted) {
                all.add(new Shown(path + ".value", fitted.value(), fitted.unit()));
                if (fitted.standard() != null) {
                    all.add(new Shown(path + ".standard", fitted.standard(), fitted.unit()));
                }
                all.add(new Shown(path + ".uncertainty", fitted.uncertainty(), fitted.unit()));
            }
        });
        return all;
    }

    /** A figure where it stands in the answer. */
    public record Shown(String path, Item.Point point, Unit unit) {}
}
