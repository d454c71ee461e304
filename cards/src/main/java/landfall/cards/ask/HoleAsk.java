// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.card.ShopCard;
import landfall.cards.card.TapFields;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.drill.Drill;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.hole.HoleChoice;
import landfall.hole.HoleEnd;
import landfall.hole.HoleWish;
import landfall.hole.TaperHole;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.quantity.Stress;
import landfall.quantity.UnitSystem;
import landfall.tap.FluteKind;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** {@code hole}: which drill, how deep, and what the thread will hold. */
public final class HoleAsk implements Question {
    static final Field<WorkMaterial> MATERIAL =
            Field.optional("material", WorkKinds.MATERIAL, "304").worded("work-material");
    static final Field<Length> DEPTH = Field.optional("depth", Quantities.length(0.05, 2000), "1/2 in");
    static final Field<Boolean> BLIND = Field.optional("blind", Kinds.YES_NO, "yes");
    static final Field<Boolean> THROUGH = Field.optional("through", Kinds.YES_NO, "yes");
    private static final Field<Double> CHAMFER = Field.optional("chamfer-threads", Quantities.threads(0.2, 40), "4");
    private static final Field<List<Drill>> DRILLS = Field.optional(
                    "drills", WorkKinds.DRILLS, "number, letter, fraction")
            .worded("drills-to-use");
    private static final Field<Entries> SHOP = Field.optional("shop", WorkKinds.SHOP, "{\"drills\":[\"metric\"]}");
    private static final Field<Boolean> FORMING = Field.optional("forming", Kinds.YES_NO, "no");
    private static final Field<FluteKind> TAP = Field.optional("tap", WorkKinds.FLUTES, "spiral-right");
    private static final Field<Double> SHARE = Field.optional("share", Quantities.SHARE, "70 %");
    private static final Field<Stress> SCREW = Field.optional("screw-strength", Quantities.STRESS, "800 N/mm2");
    private static final Field<Stress> PART = Field.optional("part-strength", Quantities.STRESS, "45 ksi");
    private static final Field<Length> HOLE = Field.optional("hole", Quantities.diameter(0.1, 500), "6.85 mm");
    private static final Field<Length> WALL = Field.optional("wall", Quantities.length(0, 1000), "4 mm");
    private static final Field<InsertLength> INSERT = Field.optional("insert", WorkKinds.INSERT, "1.5 D");
    private static final Form FORM = Form.of(
            "hole",
            TapFields.THREAD,
            MATERIAL,
            DEPTH,
            BLIND,
            THROUGH,
            CHAMFER,
            DRILLS,
            SHOP,
            FORMING,
            TAP,
            SHARE,
            SCREW,
            PART,
            HOLE,
            WALL,
            INSERT,
            ThreadAsk.UNITS);

    @Override
    public String noun() {
        return "hole";
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public List<Given> given() {
        return List.of(
                new Given.Word("CALLOUT", TapFields.THREAD.path()),
                new Given.TextFile("SHOP.json", "shop", SHOP.path()));
    }

    @Override
    public Answer<Document> answer(Map<String, String> typed) {
        Answer<Document> document = judge(typed).then(entries -> {
            HoleWish wish = wish(entries);
            UnitSystem units = entries.get(ThreadAsk.UNITS)
                    .or(() -> entries.get(SHOP).flatMap(shop -> shop.get(ShopCard.UNITS)))
                    .orElse(wish.callOut().thread().family().system());
            return TaperHole.isFor(wish.callOut())
                    ? TaperHole.of(wish).map(worked -> TaperHoleDocument.of(worked, units))
                    : HoleChoice.of(wish).map(worked -> HoleDocument.of(worked, units));
        });
        return TakenForGranted.told(document, typed);
    }

    /** The engine's choice with its working, for paper. */
    public Answer<Worked<HoleChoice>> choice(Map<String, String> typed) {
        return judge(typed).then(HoleAsk::choice);
    }

    private static Answer<Entries> judge(Map<String, String> typed) {
        return FORM.judge(typed, GrindAsk.bare(typed)).then(entries -> {
            List<Finding> findings = together(entries);
            return findings.isEmpty() ? Answer.of(entries) : Answer.refused(findings);
        });
    }

    private static Answer<Worked<HoleChoice>> choice(Entries entries) {
        return HoleChoice.of(wish(entries));
    }

    private static List<Finding> together(Entries entries) {
        List<Finding> findings = new ArrayList<>();
        if (is(entries, BLIND) && is(entries, THROUGH)) {
            findings.add(new Finding("through", "blind and through", "cannot both be", "leave one of the two out"));
        }
        FluteKind kind = entries.get(TAP).orElse(null);
        if (is(entries, FORMING) && kind != null && kind != FluteKind.FORMING) {
            findings.add(new Finding(
                    "tap", kind.code(), "is a cutting tap, but forming was asked for", "leave one of the two out"));
        }
        return findings;
    }

    private static boolean is(Entries entries, Field<Boolean> field) {
        return entries.get(field).orElse(false);
    }

    static @Nullable HoleEnd end(Entries entries) {
        if (is(entries, BLIND)) {
            return HoleEnd.BLIND;
        }
        return is(entries, THROUGH) ? HoleEnd.THROUGH : null;
    }

    private static HoleWish wish(Entries entries) {
        return new HoleWish(
                entries.need(TapFields.THREAD),
                entries.get(MATERIAL).orElse(null),
                new HoleWish.Place(
                        entries.get(DEPTH).orElse(null),
                        end(entries),
                        entries.get(WALL).orElse(null),
                        entries.get(INSERT)
                                .map(length -> length.of(entries.need(TapFields.THREAD)))
                                .orElse(null)),
                new HoleWish.Tools(
                        entries.get(DRILLS)
                                .or(() -> entries.get(SHOP).map(WorkKinds::drawersOf))
                                .orElse(null),
                        entries.get(SHARE).orElse(null),
                        entries.get(CHAMFER).orElse(null),
                        is(entries, FORMING)
                                ? FluteKind.FORMING
                                : entries.get(TAP).orElse(null)),
                new HoleWish.Strengths(
                        entries.get(SCREW).orElse(null), entries.get(PART).orElse(null)),
                entries.get(HOLE).orElse(null));
    }
}
