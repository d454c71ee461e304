// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.chip.ChipFlow;
import landfall.choice.Reach;
import landfall.choice.TapAdvice;
import landfall.choice.TapChoice;
import landfall.choice.ToolAngles;
import landfall.fault.Caution;
import landfall.quantity.Limits;
import landfall.quantity.UnitSystem;
import landfall.tap.FluteKind;
import landfall.thread.Hand;
import landfall.thread.ScrewThread;
import landfall.working.Step;
import landfall.working.Worked;

/**
 * The choice of a tap laid out as one answer. The hand of the thread is applied here: spirals of the own hand keep it.
 */
final class TapDocument {
    private final TapAdvice advice;
    private final Behind behind;
    private final ScrewThread thread;

    private TapDocument(TapAdvice advice, Behind behind) {
        this.advice = advice;
        this.behind = behind;
        this.thread = advice.wish().callOut().thread();
    }

    static Document of(Worked<TapAdvice> worked, UnitSystem units) {
        TapAdvice advice = worked.value();
        List<Step> steps = worked.steps();
        TapDocument document = new TapDocument(advice, new Behind(steps));
        return new Document(
                "tap", advice.wish().callOut().normal(), units, document.items(), steps, document.cautions());
    }

    private List<Caution> cautions() {
        List<Caution> cautions = new ArrayList<>(advice.cautions());
        if (thread.hand() == Hand.LEFT) {
            cautions.add(new Caution(
                    "leftHand",
                    "Left-hand thread: the tap turns anticlockwise to cut. Flutes of the thread's"
                            + " own hand bring chips back;"
                            + " a spiral point is ground as the mirror image.",
                    "hand"));
        }
        return cautions;
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("callout", advice.wish().callOut().normal()));
        items.add(new Item.Text("hand", thread.hand().word()));
        items.add(new Item.Rows(
                "choices",
                advice.choices().stream()
                        .map(choice -> new Item.Group("choice", choice(choice)))
                        .toList()));
        items.add(limit());
        advice.angles().ifPresent(angles -> items.addAll(angles(angles)));
        advice.reach().ifPresent(reach -> items.add(reach(reach)));
        return items;
    }

    private List<Item> choice(TapChoice choice) {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("flutes", worn(choice.flutes(), thread.hand()).code()));
        items.add(
                new Item.Text("chamfer", choice.chamfer().words(thread.family().system())));
        items.add(new Item.Text("limit", advice.limit().words()));
        advice.reach().ifPresent(reach -> items.add(behind.figure("reach", reach.depth(), "l_r")));
        items.add(new Item.Text("count", choice.count() == 0 ? "none" : Integer.toString(choice.count())));
        items.add(new Item.Text("chips", chips(choice)));
        items.add(new Item.Text("threadRelief", choice.words().threadRelief()));
        items.add(new Item.Text("surface", choice.words().surface()));
        items.add(new Item.Lines("reasons", choice.reasons()));
        items.add(new Item.Lines("cautions", choice.cautions()));
        return items;
    }

    /** What a right-handed kind of flute is on a thread of this hand. */
    static FluteKind worn(FluteKind kind, Hand hand) {
        if (hand == Hand.RIGHT) {
            return kind;
        }
        return switch (kind) {
            case SPIRAL_RIGHT -> FluteKind.SPIRAL_LEFT;
            case SPIRAL_LEFT -> FluteKind.SPIRAL_RIGHT;
            default -> kind;
        };
    }

    private static String chips(TapChoice choice) {
        return choice.flutes() == FluteKind.FORMING ? "none" : flow(choice.flow());
    }

    private static String flow(ChipFlow flow) {
        return switch (flow) {
            case BACK -> "back to the shank";
            case FORWARD -> "ahead of the tap";
            case STAYS -> "stay in the flutes";
        };
    }

    private Item limit() {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("mark", advice.limit().words()));
        Optional.ofNullable(advice.limit().pitch()).ifPresent(pitch -> items.add(pitch(pitch)));
        items.add(new Item.Text("why", advice.limit().why()));
        return new Item.Group("limit", items);
    }

    private Item pitch(Limits pitch) {
        return new Item.Range(
                "pitch",
                pitch.min() == null ? null : behind.point(pitch.min().mm(), Unit.LENGTH, "E_t.min"),
                pitch.max() == null ? null : behind.point(pitch.max().mm(), Unit.LENGTH, "E_t.max"),
                Unit.LENGTH);
    }

    private List<Item> angles(ToolAngles angles) {
        return List.of(
                new Item.Range(
                        "rake",
                        behind.point(angles.rake().least().deg(), Unit.ANGLE, "γ_1"),
                        behind.point(angles.rake().greatest().deg(), Unit.ANGLE, "γ_2"),
                        Unit.ANGLE),
                new Item.Range(
                        "chamferRelief",
                        behind.point(angles.relief().least().deg(), Unit.ANGLE, "α_1"),
                        behind.point(angles.relief().greatest().deg(), Unit.ANGLE, "α_2"),
                        Unit.ANGLE));
    }

    private Item reach(Reach reach) {
        return Item.Group.of(
                "blank",
                behind.figure("threadLength", reach.blank().lengths().thread(), "l_th"),
                behind.figure("overallLength", reach.blank().lengths().overall(), "l_oa"),
                behind.figure("shank", reach.blank().shank(), "d_sh"),
                new Item.Flag("shankEnters", reach.shankEnters()));
    }
}
