// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.List;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.card.TapFields;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.Length;
import landfall.salvage.BrokenTap;
import landfall.salvage.BrokenTap.Part;
import landfall.salvage.BrokenTap.Stump;
import landfall.salvage.Salvage;
import landfall.salvage.Worth;
import landfall.tap.FluteKind;
import landfall.tap.TapMaterial;
import landfall.working.Worked;

/** {@code broken}: ways to get a broken tap out of its hole, best first. */
public final class BrokenAsk implements Question {
    private static final Field<Length> DEPTH =
            Field.optional("depth", Quantities.length(0.05, 2000), "12 mm").worded("broken.depth");
    private static final Field<TapMaterial> TAP_MATERIAL =
            Field.optional("tap-material", WorkKinds.codes(TapMaterial.values(), TapMaterial::code), "HSS");
    private static final Field<Integer> FLUTES =
            Field.optional("flutes", Kinds.count(1, 16), "3").worded("broken.flutes");
    private static final Field<FluteKind> KIND =
            Field.optional("kind", WorkKinds.FLUTES, "straight").worded("broken.kind");
    private static final Field<Length> PROUD = Field.optional("proud", Quantities.length(0, 500), "4 mm");
    private static final Field<Worth> WORTH =
            Field.optional("worth", WorkKinds.codes(Worth.values(), Worth::word), "high");
    private static final Form FORM = Form.of(
            "broken",
            TapFields.THREAD,
            HoleAsk.MATERIAL,
            DEPTH,
            HoleAsk.BLIND,
            HoleAsk.THROUGH,
            TAP_MATERIAL,
            FLUTES,
            KIND,
            PROUD,
            WORTH,
            ThreadAsk.UNITS);

    @Override
    public String noun() {
        return "broken";
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public List<Given> given() {
        return List.of(new Given.Word("CALLOUT", TapFields.THREAD.path()));
    }

    @Override
    public Answer<Document> answer(Map<String, String> typed) {
        Answer<Document> document = FORM.judge(typed, GrindAsk.bare(typed)).then(entries -> {
            if (entries.get(HoleAsk.BLIND).orElse(false)
                    && entries.get(HoleAsk.THROUGH).orElse(false)) {
                return Answer.refused(
                        new Finding("through", "blind and through", "cannot both be", "leave one of the two out"));
            }
            Worked<Salvage> worked = Salvage.of(broken(entries));
            return Answer.of(BrokenDocument.of(
                    worked,
                    entries.get(ThreadAsk.UNITS)
                            .orElse(entries.need(TapFields.THREAD)
                                    .thread()
                                    .family()
                                    .system())));
        });
        return TakenForGranted.told(document, typed);
    }

    private static BrokenTap broken(Entries entries) {
        return new BrokenTap(
                entries.need(TapFields.THREAD),
                new Part(
                        entries.get(HoleAsk.MATERIAL).orElse(null),
                        entries.get(DEPTH).orElse(null),
                        HoleAsk.end(entries)),
                new Stump(
                        entries.get(TAP_MATERIAL).orElse(TapMaterial.HSS),
                        entries.get(FLUTES).orElse(null),
                        entries.get(KIND).orElse(null),
                        entries.get(PROUD).orElse(null)),
                entries.get(WORTH).orElse(null));
    }
}
