// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cut.CutForecast;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.symptom.Diagnosis;
import landfall.symptom.HoleFacts;
import landfall.symptom.Symptom;
import landfall.symptom.TapFacts;
import landfall.working.Step;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** Symptoms, or the causes of one, laid out as an answer. */
final class WhyDocument {
    private final Diagnosis diagnosis;
    private final Behind behind;

    private WhyDocument(Diagnosis diagnosis, Behind behind) {
        this.diagnosis = diagnosis;
        this.behind = behind;
    }

    /** Every symptom held. */
    static Document list(UnitSystem units) {
        List<Item.Group> rows = new ArrayList<>();
        for (Symptom symptom : Symptom.all()) {
            rows.add(Item.Group.of(
                    "symptom",
                    new Item.Text("symptom", symptom.code()),
                    new Item.Text("means", symptom.words()),
                    new Item.Text("also", String.join(", ", symptom.others()))));
        }
        return new Document("why", "symptoms", units, List.of(new Item.Rows("symptoms", rows)), List.of(), List.of());
    }

    static Document of(Worked<Diagnosis> worked, UnitSystem units) {
        Diagnosis diagnosis = worked.value();
        List<Step> steps = worked.steps();
        List<Item> items = new WhyDocument(diagnosis, new Behind(steps)).items();
        return new Document("why", diagnosis.symptom().code(), units, items, steps, diagnosis.cautions());
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("symptom", diagnosis.symptom().code()));
        items.add(new Item.Text("means", diagnosis.symptom().words()));
        List<Item.Group> rows = new ArrayList<>();
        for (Diagnosis.Ranked ranked : diagnosis.causes()) {
            rows.add(Item.Group.of(
                    "cause",
                    new Item.Text("cause", ranked.cause().cause()),
                    new Item.Text("check", ranked.cause().check()),
                    new Item.Text("mend", ranked.cause().mend()),
                    new Item.Text("likelihood", ranked.likelihood().word()),
                    new Item.Text("here", ranked.here()),
                    new Item.Text("page", ranked.cause().page())));
        }
        items.add(new Item.Rows("causes", rows));
        diagnosis.tap().ifPresent(tap -> items.add(tap(tap)));
        diagnosis.hole().ifPresent(hole -> items.add(hole(hole)));
        diagnosis.cut().ifPresent(cut -> items.add(cut(cut.cut())));
        return items;
    }

    private Item tap(TapFacts tap) {
        return Item.Group.of(
                "tap",
                behind.figure("chip", tap.chip(), "h_y"),
                behind.figure("backTurn", tap.backTurn(), Unit.PURE, "B_y"));
    }

    private Item hole(HoleFacts hole) {
        return Item.Group.of(
                "hole",
                new Item.Range(
                        "minor", end(hole.minor().min()), end(hole.minor().max()), Unit.LENGTH),
                new Item.Text("drill", hole.drill().drill().called()),
                behind.figure("share", 100 * hole.drill().share(), Unit.SHARE, "q"),
                behind.figure("lead", hole.lead(), "L_y"));
    }

    private Item cut(CutForecast cut) {
        return Item.Group.of(
                "cut",
                behind.figure("hole", cut.wish().hole(), "D_h"),
                band("torque", cut.load().torque().full(), Unit.TORQUE, List.of("T_l", "T", "T_h")),
                band("breaking", cut.load().strength().breaking(), Unit.TORQUE, List.of("B_l", "B_e", "B_h")),
                band("margin", cut.load().margin(), Unit.PURE, List.of("m_l", "m", "m_h")),
                band("clearAfterDepth", cut.chips().room().clearAfter(), Unit.LENGTH, List.of("z_l", "z_c", "z_h")));
    }

    /** @param symbols of the low, the expected and the high figure */
    private Item band(String key, Band band, Unit unit, List<String> symbols) {
        return new Item.BandFigure(
                key,
                behind.point(band.low(), unit, symbols.get(0)),
                behind.point(band.expected(), unit, symbols.get(1)),
                behind.point(band.high(), unit, symbols.get(2)),
                unit);
    }

    private Item.@Nullable Point end(@Nullable Length length) {
        return length == null ? null : behind.point(length.mm(), Unit.LENGTH, "D1min", "D1max");
    }
}
