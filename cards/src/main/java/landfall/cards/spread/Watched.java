// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.spread.Within;

/**
 * A figure of the answer that is watched.
 *
 * @param path from the answer on, as in its JSON: {@code relief.working}, {@code torque.expected}; rows of a table are
 *     counted from 1: {@code dial.2.reading}
 * @param typed its limits as they were written; empty for none
 * @param unit that its values are held in
 * @param nominal what it is when nothing is off
 */
public record Watched(String path, String typed, Unit unit, double nominal, Within within) {

    /** A figure found in an answer. */
    record Found(double value, Unit unit) {}

    /** The figure in one answer; empty where that answer has none. */
    static Optional<Found> in(Document document, String path) {
        return in(document.items(), List.of(path.split("\\.")));
    }

    OptionalDouble of(Document document) {
        Optional<Found> found = in(document, path);
        return found.isPresent() ? OptionalDouble.of(found.get().value()) : OptionalDouble.empty();
    }

    private static Optional<Found> in(List<Item> items, List<String> path) {
        return items.stream()
                .filter(item -> item.key().equals(path.get(0)))
                .findFirst()
                .flatMap(item -> under(item, path.subList(1, path.size())));
    }

    private static Optional<Found> under(Item item, List<String> rest) {
        if (item instanceof Item.Group group) {
            return rest.isEmpty() ? Optional.empty() : in(group.items(), rest);
        } else if (item instanceof Item.Rows rows) {
            return row(rows, rest);
        } else if (rest.isEmpty()) {
            return whole(item);
        }
        return rest.size() == 1 ? part(item, rest.get(0)) : Optional.empty();
    }

    private static Optional<Found> row(Item.Rows rows, List<String> rest) {
        if (rest.size() < 2 || !rest.get(0).matches("[1-9]\\d{0,5}")) {
            return Optional.empty();
        }
        int place = Integer.parseInt(rest.get(0)) - 1;
        return place < rows.rows().size()
                ? in(rows.rows().get(place).items(), rest.subList(1, rest.size()))
                : Optional.empty();
    }

    /** Yes counts 1, no 0: the mean is then the share of yes. */
    private static Optional<Found> whole(Item item) {
        if (item instanceof Item.Figure figure) {
            return Optional.of(new Found(figure.value(), figure.unit()));
        } else if (item instanceof Item.Flag flag) {
            return Optional.of(new Found(flag.yes() ? 1 : 0, Unit.PURE));
        } else if (item instanceof Item.Count count) {
            return Optional.of(new Found(count.count(), Unit.PURE));
        }
        return Optional.empty();
    }

    private static Optional<Found> part(Item item, String end) {
        if (item instanceof Item.Range range) {
            Item.Point point = end.equals("min") ? range.min() : end.equals("max") ? range.max() : null;
            return point == null ? Optional.empty() : Optional.of(new Found(point.value(), range.unit()));
        } else if (item instanceof Item.BandFigure band) {
            return switch (end) {
                case "low" -> Optional.of(new Found(band.low().value(), band.unit()));
                case "expected" -> Optional.of(new Found(band.expected().value(), band.unit()));
                case "high" -> Optional.of(new Found(band.high().value(), band.unit()));
                default -> Optional.empty();
            };
        } else if (item instanceof Item.FittedFigure fitted) {
            return switch (end) {
                case "value" -> Optional.of(new Found(fitted.value().value(), fitted.unit()));
                case "uncertainty" -> Optional.of(new Found(fitted.uncertainty().value(), fitted.unit()));
                default -> Optional.empty();
            };
        }
        return Optional.empty();
    }
}
