// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.words.Words;

/**
 * Lays any answer out in sections, one for each group of it: the way of a page that has no layout of its own. A group
 * inside a group adds its name to its figures'.
 */
final class Sections {
    private final Document document;
    private final AnswerView view;
    private final List<Section> sections = new ArrayList<>();

    private Sections(Document document, AnswerView view) {
        this.document = document;
        this.view = view;
    }

    static List<Section> of(Document document, AnswerView view) {
        Sections all = new Sections(document, view);
        List<Item> loose = document.items().stream()
                .filter(item -> !(item instanceof Item.Group))
                .toList();
        all.add("", "", loose);
        all.addGroups(List.of());
        return List.copyOf(all.sections);
    }

    static List<Section> withoutLoose(Document document, AnswerView view, List<String> laidOut) {
        Sections all = new Sections(document, view);
        all.addGroups(laidOut);
        return List.copyOf(all.sections);
    }

    private void addGroups(List<String> without) {
        for (Item item : document.items()) {
            if (item instanceof Item.Group group && !without.contains(group.key())) {
                add(view.label(group.key()), group.key() + ".", group.items());
            }
        }
    }

    private void add(String title, String prefix, List<Item> items) {
        Section section = new Section(
                title,
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>(),
                new Section.Listing(new ArrayList<>(), new ArrayList<>()));
        items.forEach(item -> put(item, prefix, section));
        sections.add(section);
    }

    private void put(Item item, String prefix, Section section) {
        String path = prefix + item.key();
        if (item instanceof Item.Text text) {
            section.facts().add(new Section.Fact(view.label(path), view.words(text)));
        } else if (item instanceof Item.Flag flag) {
            section.facts().add(new Section.Fact(view.label(path), Words.of(flag.yes() ? "text.yes" : "text.no")));
        } else if (item instanceof Item.Count count) {
            section.facts().add(new Section.Fact(view.label(path), String.valueOf(count.count())));
        } else if (item instanceof Item.Range) {
            section.limits().add(path);
        } else if (item instanceof Item.Figure
                || item instanceof Item.BandFigure
                || item instanceof Item.FittedFigure) {
            section.figures().addAll(view.figures(path));
        } else if (item instanceof Item.Rows) {
            view.table(path).ifPresent(section.listing().tables()::add);
        } else if (item instanceof Item.Lines lines) {
            section.listing().lines().add(new Section.Lines(view.label(path), lines.lines()));
        } else if (item instanceof Item.Group group) {
            group.items().forEach(inner -> put(inner, path + ".", section));
        } else {
            throw new IllegalStateException("no place on a page for " + document.noun() + "." + path);
        }
    }
}
