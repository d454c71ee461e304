// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

import java.util.List;
import java.util.Optional;
import landfall.cards.answer.Item;
import landfall.cards.words.Words;
import landfall.quantity.UnitSystem;

/** One row of a table of an answer, looked into by key. */
public record RowView(Item.Group row, String noun, String table, UnitSystem units) {

    /** A text as programs read it; empty where the row has none. */
    public String code(String key) {
        return texts(key).orElse("");
    }

    /** A text in the trade's words. */
    public String words(String key) {
        return texts(key).map(text -> words(noun, text)).orElse("");
    }

    /** Some texts are codes, made for programs to read: their words where there are some. */
    static String words(String noun, String text) {
        return Words.find("page.code." + noun + "." + text).orElse(text);
    }

    /** Its sentences under a key. */
    public List<String> lines(String key) {
        return row.items().stream()
                .filter(item -> item.key().equals(key) && item instanceof Item.Lines)
                .flatMap(item -> ((Item.Lines) item).lines().stream())
                .toList();
    }

    /** Whether the row says yes. */
    public boolean yes(String key) {
        return row.items().stream()
                .anyMatch(item -> item.key().equals(key) && item instanceof Item.Flag flag && flag.yes());
    }

    /** Its figures, each with its name and its unit. */
    public List<String> figures() {
        return row.items().stream()
                .filter(Item.Figure.class::isInstance)
                .map(Item.Figure.class::cast)
                .map(figure -> Digits.shown(figure.value(), figure.unit(), units)
                        + (Digits.sign(figure.unit(), units).equals("\u00b0") ? "" : " ")
                        + Digits.sign(figure.unit(), units) + " "
                        + Words.of(noun + "." + table + "." + figure.key()))
                .toList();
    }

    private Optional<String> texts(String key) {
        return row.items().stream()
                .filter(item -> item.key().equals(key) && item instanceof Item.Text)
                .map(item -> ((Item.Text) item).text())
                .findFirst();
    }
}
