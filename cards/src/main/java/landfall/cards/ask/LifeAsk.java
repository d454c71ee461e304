// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cards.card.TapCard;
import landfall.cards.card.TapFields;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.regrind.LifeLimit;
import landfall.regrind.LifeLine;
import landfall.regrind.LifeWish;
import landfall.regrind.SharpeningsLeft;
import landfall.tap.Wear;
import landfall.working.Rule;
import landfall.working.Step;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** {@code life}: how many sharpenings are left in a tap, and what ends them. */
public final class LifeAsk implements Question {
    static final Field<Length> REACH = Field.optional("reach", Quantities.length(0.1, 500), "12 mm");
    private static final Field<Integer> CAP = Field.optional("cap", Kinds.count(0, 1000), "8");
    private static final Field<LifeWish.End> END = Field.optional(
            "end", Kinds.choice(Kinds.ordered("ground", LifeWish.End.GROUND, "kept", LifeWish.End.KEPT)), "ground");
    static final Caution WEAR_ASSUMED = new Caution(
            "wearAssumed", "Wear not told: the wear land of a tap that is due is taken, common practice.", "w_wear");
    private static final Rule NO_LAND_TAKEN =
            Rule.given("d_f", "deg", "land that a sharpening of the face takes: none, there is no wear land");
    private static final Form FORM = TapCard.FORM
            .and(Form.of("life", GrindAsk.WEAR, REACH, CAP, END, ThreadAsk.UNITS))
            .called("life");

    @Override
    public String noun() {
        return "life";
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public List<Given> given() {
        return List.of(new Given.Card("CARD", TapCard.FORM));
    }

    @Override
    public Answer<Document> answer(Map<String, String> typed) {
        return FORM.judge(typed, GrindAsk.bare(typed))
                .then(entries -> left(entries).map(worked -> document(worked, entries)));
    }

    /** The engine's record with its working, for paper. */
    public Answer<Worked<SharpeningsLeft>> left(Map<String, String> typed) {
        return FORM.judge(typed, GrindAsk.bare(typed)).then(LifeAsk::left);
    }

    private static Answer<Worked<SharpeningsLeft>> left(Entries entries) {
        LifeWish wish = new LifeWish(
                entries.get(GrindAsk.WEAR).orElse(Wear.DUE),
                entries.get(REACH).orElse(null),
                entries.get(CAP).orElse(null),
                entries.get(TapFields.CUTS).orElse(null),
                entries.get(END).orElse(LifeWish.End.GROUND));
        return TapCard.tap(entries).then(tap -> SharpeningsLeft.of(tap, wish));
    }

    private static Document document(Worked<SharpeningsLeft> worked, Entries entries) {
        SharpeningsLeft left = worked.value();
        UnitSystem units =
                entries.get(ThreadAsk.UNITS).orElse(left.tap().thread().family().system());
        List<Item> items = items(left, new Behind(worked.steps()));
        List<Step> steps = new ArrayList<>(worked.steps());
        if (isFresh(left)) {
            steps.add(new Step(NO_LAND_TAKEN, 0));
        }
        List<Caution> cautions = new ArrayList<>();
        if (!entries.has(GrindAsk.WEAR)) {
            cautions.add(WEAR_ASSUMED);
        }
        cautions.addAll(left.cautions());
        return new Document("life", left.tap().callOut().normal(), units, items, steps, cautions);
    }

    private static List<Item> items(SharpeningsLeft left, Behind behind) {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("callout", left.tap().callOut().normal()));
        List<Item> chamfer = new ArrayList<>();
        chamfer.add(behind.figure("stock", left.chamfer().stock(), "s"));
        chamfer.add(behind.figure("allowance", left.chamfer().allowance(), "s_0"));
        chamfer.addAll(count(left.chamfer().count(), left.chamfer().limit()));
        items.add(new Item.Group("chamfer", chamfer));
        items.add(new Item.Group("face", face(left, behind)));
        if (left.line() != null) {
            items.add(Item.Group.of(
                    "plan",
                    new Item.Count("chamfers", left.line().chamfers()),
                    new Item.Count("faces", left.line().faces()),
                    behind.figure("threadLost", last(left.line()).threadLost(), "l_lost"),
                    behind.figure("landLeft", last(left.line()).land(), "θ_end")));
        }
        items.add(new Item.Text("compared", compared(left)));
        return items;
    }

    private static LifeLine.Station last(LifeLine line) {
        return line.stations().get(line.stations().size() - 1);
    }

    /** The ways beside each other in one sentence. */
    private static String compared(SharpeningsLeft left) {
        Integer byChamfer = left.chamfer().count();
        Integer byFace = left.face() == null ? null : left.face().count();
        String faces = left.face() == null ? Words.of("life.notGround") : number(byFace);
        LifeLine line = left.line();
        String both = number(line == null ? null : Integer.valueOf(line.chamfers() + line.faces()));
        String sentence = Words.of("life.comparison", number(byChamfer), faces, both);
        return byChamfer == null || byFace == null || byFace == 0
                ? sentence
                : sentence + " "
                        + Words.of("life.ratio", String.format(Locale.ROOT, "%.1f", (double) byChamfer / byFace));
    }

    private static String number(@Nullable Integer count) {
        return count == null ? Words.of("life.noLimit") : count.toString();
    }

    /** Faces that are not ground say why: not on these flutes, or not without a wear land. */
    private static List<Item> face(SharpeningsLeft left, Behind behind) {
        if (left.face() != null) {
            List<Item> face = new ArrayList<>();
            face.add(behind.figure("angle", left.face().angle(), "d_f"));
            face.addAll(count(left.face().count(), left.face().limit()));
            return face;
        }
        if (isFresh(left)) {
            return List.of(
                    new Item.Figure("angle", 0, Unit.ANGLE, NO_LAND_TAKEN),
                    new Item.Text("limit", "not ground: no wear land to take off"));
        }
        return List.of(
                new Item.Count("count", 0),
                new Item.Text(
                        "limit", "not ground: " + left.tap().flutes().kind().code() + " flutes, chamfer only"));
    }

    private static boolean isFresh(SharpeningsLeft left) {
        return left.face() == null
                && left.cautions().stream().anyMatch(caution -> caution.code().equals("noWear"));
    }

    private static Item limit(LifeLimit limit) {
        return new Item.Text("limit", limit.code(), Words.of("limit." + limit.code()));
    }

    /** A count and what ends it; nothing where nothing known does. */
    static List<Item> count(@Nullable Integer count, @Nullable LifeLimit limit) {
        return count == null || limit == null ? List.of() : List.of(new Item.Count("count", count), limit(limit));
    }
}
