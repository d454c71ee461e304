// SPDX-License-Identifier: Apache-2.0
package landfall.app.grind;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import landfall.app.figure.AnswerView;
import landfall.app.figure.Digits;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cards.words.Words;
import landfall.quantity.UnitSystem;

/**
 * The dial targets with one row for each land angle and one column for each place where a dial can stand.
 *
 * @param places their names, in the answer's order
 */
public record DialTable(List<String> places, List<Row> rows, String unit) {
    /**
     * One land angle.
     *
     * @param readings one for each place, empty where that place has no target at this angle
     */
    public record Row(String angle, List<String> readings) {}

    /** The targets of an answer. */
    public static DialTable of(AnswerView answer) {
        UnitSystem units = answer.units();
        List<String> places = new ArrayList<>();
        Map<Double, Map<String, String>> byAngle = new TreeMap<>();
        for (Item.Group row : answer.rows("dial")) {
            String place = text(row, "place");
            if (!places.contains(place)) {
                places.add(place);
            }
            Item.Figure reading = figure(row, "reading");
            byAngle.computeIfAbsent(figure(row, "land").value(), angle -> new LinkedHashMap<>())
                    .put(place, Digits.signed(reading.value(), reading.unit(), units));
        }
        List<Row> rows = new ArrayList<>();
        byAngle.forEach((angle, readings) -> rows.add(new Row(
                Digits.shortAngle(angle),
                places.stream().map(place -> readings.getOrDefault(place, "")).toList())));
        return new DialTable(
                places.stream().map(place -> Words.of("page.place." + place)).toList(), rows, Unit.LENGTH.sign(units));
    }

    /** Where a dial stands, and which way its reading counts. */
    public record Stand(String place, String stands, String sign) {}

    /** The places in words. */
    public static List<Stand> stands(AnswerView answer) {
        return answer.rows("places").stream()
                .map(row ->
                        new Stand(Words.of("page.place." + text(row, "place")), text(row, "stands"), text(row, "sign")))
                .toList();
    }

    private static String text(Item.Group row, String key) {
        return row.items().stream()
                .filter(item -> item.key().equals(key) && item instanceof Item.Text)
                .map(item -> ((Item.Text) item).text())
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("a dial target without " + key));
    }

    private static Item.Figure figure(Item.Group row, String key) {
        return row.items().stream()
                .filter(item -> item.key().equals(key) && item instanceof Item.Figure)
                .map(item -> (Item.Figure) item)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("a dial target without " + key));
    }
}
