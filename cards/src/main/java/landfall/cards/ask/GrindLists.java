// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.fault.Answer;
import landfall.grind.DialTarget;
import landfall.grind.GrindSetup;
import landfall.grind.Passes;
import landfall.grind.Place;
import landfall.grind.ProcedureStep;
import landfall.grind.WheelDirection;
import landfall.grind.WheelMarking;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.regrind.LifeLimit;
import landfall.regrind.SharpeningsLeft;
import org.jspecify.annotations.Nullable;

/** The lists of a regrind set-up: dial targets, places, passes, the wheel, the procedure. */
final class GrindLists {
    private final GrindSetup setup;
    private final Behind behind;
    private final UnitSystem units;

    GrindLists(GrindSetup setup, Behind behind, UnitSystem units) {
        this.setup = setup;
        this.behind = behind;
        this.units = units;
    }

    Item dial() {
        List<Item.Group> rows = new ArrayList<>();
        for (DialTarget target : setup.motion().dial()) {
            rows.add(Item.Group.of(
                    "target",
                    new Item.Text("place", target.place().code()),
                    behind.figure("land", target.land(), "θ"),
                    behind.figure("reading", target.reading(), symbol(target.place()))));
        }
        return new Item.Rows("dial", rows, new Item.Cross("place", "land", "reading"));
    }

    private static String symbol(Place place) {
        return switch (place) {
            case END -> "y_end";
            case SHANK -> "y_shank";
            case FLANK -> "y_flank";
            case CREST -> "y_crest";
            case CHAMFER_STILL -> "y_still";
            case CHAMFER_WORKING -> "y_work";
        };
    }

    Item places() {
        List<Item.Group> rows = new ArrayList<>();
        for (Place place : Place.values()) {
            rows.add(Item.Group.of(
                    "place",
                    new Item.Text("place", place.code()),
                    new Item.Text("stands", place.stands()),
                    new Item.Text("sign", place.sign())));
        }
        return new Item.Rows("places", rows);
    }

    Item passes() {
        List<Item.Group> rows = new ArrayList<>();
        for (Passes.Pass pass : setup.work().passes()) {
            List<Item> items = new ArrayList<>();
            items.add(new Item.Text("kind", pass.kind().words()));
            items.add(new Item.Count("count", pass.count()));
            if (pass.kind() != Passes.Kind.SPARK_OUT) {
                items.add(behind.figure("infeed", pass.infeed(), "c_r", "c_f"));
            }
            rows.add(new Item.Group("pass", items));
        }
        return new Item.Rows("passes", rows);
    }

    /** The marking part by part, and the speed at the rim. */
    private static Item.Group part(String part, String means) {
        return Item.Group.of("part", new Item.Text("part", part), new Item.Text("means", means));
    }

    /** @param direction of the rim over the edge; null where it was not chosen, and both are told */
    Item wheel(@Nullable WheelDirection direction) {
        List<Item.Group> rows = new ArrayList<>();
        WheelMarking marking = setup.work().wheel().marking();
        if (marking != null) {
            for (WheelMarking.Part part : marking.parts()) {
                rows.add(Item.Group.of(
                        "part",
                        new Item.Text("part", part.name()),
                        new Item.Text("mark", part.mark()),
                        new Item.Text("means", part.meaning())));
            }
        }
        if (setup.work().wheel().surface() != null) {
            rows.add(Item.Group.of(
                    "part",
                    new Item.Text("part", "speed at the rim"),
                    behind.figure("speed", setup.work().wheel().surface().mPerS(), Unit.WHEEL_SPEED, "v_w")));
        }
        for (WheelDirection way : WheelDirection.values()) {
            if (direction == null || way == direction) {
                rows.add(part("direction", way.words()));
            }
        }
        rows.add(part(
                "burn",
                "blue or straw tint, soft edge: dull, glazed or too hard a wheel, too much at once,"
                        + " dwelling at the edge;"
                        + " dress often, take less, coolant in a flood or none"));
        return new Item.Rows("wheel", rows);
    }

    /**
     * Sharpenings left, roughly: by chamfer and by face alone. The question {@code life} shows how they are counted.
     */
    Item life(Answer<SharpeningsLeft> answer) {
        List<Item.Group> rows = new ArrayList<>();
        if (answer instanceof Answer.Of<SharpeningsLeft> left) {
            rows.add(left(
                    "chamfer",
                    left.value().chamfer().count(),
                    left.value().chamfer().limit()));
            if (left.value().face() != null) {
                rows.add(left(
                        "face", left.value().face().count(), left.value().face().limit()));
            }
        }
        return new Item.Rows("life", rows);
    }

    private static Item.Group left(String by, @Nullable Integer count, @Nullable LifeLimit limit) {
        List<Item> items = new ArrayList<>(List.of(new Item.Text("by", by)));
        items.addAll(LifeAsk.count(count, limit));
        return new Item.Group("way", items);
    }

    /** The procedure with the targets put into its sentences. */
    Item procedure() {
        List<String> lines = new ArrayList<>();
        for (ProcedureStep step : setup.work().procedure()) {
            String target = target(step.angle(), step.length());
            lines.add(target.isEmpty() ? step.text() : step.text() + " [" + target + "]");
        }
        return new Item.Lines("procedure", lines);
    }

    private String target(@Nullable Angle angle, @Nullable Length length) {
        if (angle != null) {
            return String.format(Locale.ROOT, "%.2f deg", angle.deg());
        }
        if (length == null) {
            return "";
        }
        return units == UnitSystem.INCH
                ? String.format(Locale.ROOT, "%.4f in", length.inch())
                : String.format(Locale.ROOT, "%.3f mm", length.mm());
    }
}
