// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.quantity.UnitSystem;
import landfall.tap.mark.Marking;
import landfall.tap.mark.MarkingReader;
import landfall.tap.mark.TapZone;
import landfall.working.Worked;

/** {@code marking}: what stands on a tap's shank, part by part, and the limits that it stands for. */
public final class MarkingAsk implements Question {
    private static final Kind<Marking> MARKING = new Kind<>(
            "what stands on the shank of a tap",
            (text, bare) -> MarkingReader.read(text),
            Kinds.ordered("type", "string", "minLength", 1));
    private static final Field<Marking> TEXT = Field.needed("marking", MARKING, "1/4-20 UNC GH3 HSS");
    private static final Form FORM = Form.of("marking", TEXT, ThreadAsk.UNITS);

    @Override
    public String noun() {
        return "marking";
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public List<Given> given() {
        return List.of(new Given.Word("MARKING", TEXT.path()));
    }

    @Override
    public Answer<Document> answer(Map<String, String> typed) {
        return FORM.judge(typed, UnitSystem.METRIC).then(MarkingAsk::document);
    }

    private static Answer<Document> document(Entries entries) {
        Marking marking = entries.need(TEXT);
        try {
            Worked<Optional<TapZone>> zone =
                    Worked.of(pen -> marking.mark().map(mark -> TapZone.of(mark, marking.callOut(), pen)));
            List<Caution> cautions = new ArrayList<>(marking.cautions());
            zone.value().ifPresent(limits -> cautions.addAll(limits.cautions()));
            return Answer.of(new Document(
                    "marking",
                    marking.callOut().normal(),
                    entries.get(ThreadAsk.UNITS)
                            .orElse(marking.callOut().thread().family().system()),
                    items(marking, zone),
                    zone.steps(),
                    cautions));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static List<Item> items(Marking marking, Worked<Optional<TapZone>> zone) {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("callout", marking.callOut().normal()));
        items.add(new Item.Text("hand", marking.callOut().thread().hand().word()));
        items.add(new Item.Rows(
                "fields",
                marking.fields().stream()
                        .map(field -> Item.Group.of(
                                "field",
                                new Item.Text("text", field.text()),
                                new Item.Text("kind", field.kind()),
                                new Item.Text("means", field.means()),
                                new Item.Text("from", field.read() ? "read" : "memory")))
                        .toList()));
        zone.value().ifPresent(limits -> items.add(new FoundItems(new Behind(zone.steps())).zone(limits)));
        items.add(new Item.Text("written", marking.written()));
        return items;
    }
}
