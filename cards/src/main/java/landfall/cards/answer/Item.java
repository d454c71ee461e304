// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Rule;
import org.jspecify.annotations.Nullable;

/**
 * One entry of an answer, under the key that programs read. Values are held in the metric unit of their {@link Unit};
 * the printer chooses what is shown. Every figure names the rule that made it, and the document holds its step.
 */
public sealed interface Item {
    String key();

    /** A value and the rule that made it. */
    record Point(double value, Rule rule) {
        public static Point of(Length length, Rule rule) {
            return new Point(length.mm(), rule);
        }
    }

    record Figure(String key, double value, Unit unit, Rule rule) implements Item {
        public static Figure of(String key, Length length, Rule rule) {
            return new Figure(key, length.mm(), Unit.LENGTH, rule);
        }

        public static Figure of(String key, Angle angle, Rule rule) {
            return new Figure(key, angle.deg(), Unit.ANGLE, rule);
        }

        public Point point() {
            return new Point(value, rule);
        }
    }

    /** Limits; an end that is left open is null. */
    record Range(String key, @Nullable Point min, @Nullable Point max, Unit unit) implements Item {}

    /** An estimate. */
    record BandFigure(String key, Point low, Point expected, Point high, Unit unit) implements Item {}

    /**
     * A figure fitted to readings.
     *
     * @param standard uncertainty; null where only the expanded one is known
     * @param uncertainty expanded, 95 %
     */
    record FittedFigure(String key, Point value, @Nullable Point standard, Point uncertainty, Unit unit)
            implements Item {}

    /**
     * A word or a sentence.
     *
     * @param text as programs read it
     * @param shown as people do, where a code would tell them little
     */
    record Text(String key, String text, String shown) implements Item {
        public Text(String key, String text) {
            this(key, text, text);
        }
    }

    record Flag(String key, boolean yes) implements Item {}

    record Count(String key, int count) implements Item {}

    record Group(String key, List<Item> items) implements Item {
        public Group {
            items = List.copyOf(items);
        }

        public static Group of(String key, Item... items) {
            return new Group(key, List.of(items));
        }
    }

    /**
     * A table: groups of the same shape; their own keys are not printed.
     *
     * @param cross how plain text may fold it; null for one line a row
     */
    record Rows(String key, List<Group> rows, @Nullable Cross cross) implements Item {
        public Rows {
            rows = List.copyOf(rows);
        }

        public Rows(String key, List<Group> rows) {
            this(key, rows, null);
        }
    }

    /** A table read across and down: a column for each text under one key, a line for each figure under another. */
    record Cross(String across, String down, String cell) {}

    /** Sentences in order. */
    record Lines(String key, List<String> lines) implements Item {
        public Lines {
            lines = List.copyOf(lines);
        }
    }
}
