// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import landfall.cards.answer.Document;
import landfall.cards.card.TapCard;
import landfall.cards.card.TapFields;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.cards.form.Nearest;
import landfall.cards.form.Quantities;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.symptom.Diagnosis;
import landfall.symptom.Known;
import landfall.symptom.Symptom;
import landfall.tap.Tap;
import landfall.tap.TapMaterial;
import landfall.tap.Wear;
import landfall.thread.CallOut;
import landfall.working.Worked;

/**
 * {@code why}: from a symptom to its causes. Alone it lists the symptoms.
 *
 * <p>A tap card can stand beside the symptom. {@code material} is the card's (what the tap is made of) when it names
 * one of those, else what is tapped.
 */
public final class WhyAsk implements Question {
    private static final List<String> CODES =
            Symptom.all().stream().map(Symptom::code).toList();
    private static final Field<Symptom> SYMPTOM = Field.optional(
            "symptom",
            new Kind<>(
                    "a symptom, such as oversize or torn-flank",
                    (text, bare) -> symptom(text),
                    Kinds.ordered("type", "string", "enum", CODES)),
            "oversize");
    private static final Field<CallOut> CALL_OUT =
            Field.optional("callout", TapFields.THREAD.kind(), "M8x1.25-6H").worded("thread");
    /** Read by hand: what the tap is made of is judged with its card, what is tapped under {@code cuts}. */
    private static final Field<String> MATERIAL =
            Field.optional("material", Kinds.TEXT, "304").worded("work-material");

    private static final Field<Length> HOLE =
            Field.optional("hole", Quantities.diameter(0.1, 500), "6.8 mm").worded("hole-to-tap");
    private static final Field<Wear> WEAR =
            Field.optional("wear", WearKind.WEAR, "fresh").worded("wear-to-cut");

    private static final Form FORM = form("why");

    private static Form form(String name) {
        List<Field<?>> fields = new ArrayList<>(List.of(SYMPTOM, CALL_OUT, HOLE, HoleAsk.DEPTH, WEAR));
        TapCard.FORM
                .fields()
                .forEach(field -> fields.add(field.path().equals(MATERIAL.path()) ? MATERIAL : field.leftOpen()));
        fields.add(ThreadAsk.UNITS);
        return new Form(name, fields);
    }

    @Override
    public String noun() {
        return "why";
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public List<Given> given() {
        return List.of(new Given.Word("SYMPTOM", "symptom"), new Given.Card("CARD", "card", TapCard.FORM));
    }

    @Override
    public Answer<Document> answer(Map<String, String> asked) {
        Map<String, String> typed = workMaterialApart(asked);
        return judge(typed).then(entries -> {
            UnitSystem units = entries.get(ThreadAsk.UNITS).orElse(bare(typed));
            Optional<Symptom> symptom = entries.get(SYMPTOM);
            return symptom.isEmpty()
                    ? Answer.of(WhyDocument.list(units))
                    : known(entries, typed).map(known -> WhyDocument.of(Diagnosis.of(symptom.get(), known), units));
        });
    }

    /** The engine's diagnosis with its working; a symptom must be given. */
    public Answer<Worked<Diagnosis>> diagnosis(Map<String, String> asked) {
        Map<String, String> typed = workMaterialApart(asked);
        return judge(typed)
                .then(entries -> known(entries, typed).map(known -> Diagnosis.of(entries.need(SYMPTOM), known)));
    }

    private static Answer<Entries> judge(Map<String, String> typed) {
        Answer<Entries> judged = FORM.judge(typed, bare(typed));
        return judged instanceof Answer.Of
                ? judged
                : Answer.refused(judged.findings().stream()
                        .map(found -> found.field().equals("cuts")
                                ? new Finding("material", found.given(), found.why(), found.mend())
                                : found)
                        .toList());
    }

    private static UnitSystem bare(Map<String, String> typed) {
        String callOut = typed.getOrDefault("callout", "");
        return callOut.isBlank() ? GrindAsk.bare(typed) : GrindAsk.bare(Map.of(TapFields.THREAD.path(), callOut));
    }

    /** What is tapped stands on a card as {@code cuts}. */
    private static Map<String, String> workMaterialApart(Map<String, String> asked) {
        String material = asked.getOrDefault("material", "").strip().toLowerCase(Locale.ROOT);
        for (TapMaterial own : TapMaterial.values()) {
            if (own.code().toLowerCase(Locale.ROOT).equals(material)) {
                return asked;
            }
        }
        Map<String, String> typed = new LinkedHashMap<>(asked);
        if (!material.isEmpty()) {
            typed.put("cuts", typed.remove("material"));
        }
        return typed;
    }

    private static Answer<Known> known(Entries entries, Map<String, String> typed) {
        CallOut callOut = entries.get(CALL_OUT).orElse(null);
        Known.Job job = new Known.Job(
                entries.get(HOLE).orElse(null),
                entries.get(HoleAsk.DEPTH).orElse(null),
                entries.get(WEAR).orElse(null));
        if (!entries.has(TapFields.THREAD)) {
            return Answer.of(
                    new Known(callOut, null, entries.get(TapFields.CUTS).orElse(null), job));
        }
        Map<String, String> card = new LinkedHashMap<>(typed);
        card.keySet().retainAll(TapCard.FORM.paths());
        Answer<Tap> tap = TapCard.FORM.judge(card, bare(typed)).then(TapCard::tap);
        return tap.map(
                found -> new Known(callOut, found, entries.get(TapFields.CUTS).orElse(null), job));
    }

    private static Answer<Symptom> symptom(String text) {
        return Symptom.named(text).<Answer<Symptom>>map(Answer::of).orElseGet(() -> {
            List<String> names = new ArrayList<>(CODES);
            Symptom.all().forEach(symptom -> names.addAll(symptom.others()));
            return Answer.refused(new Finding(
                    "",
                    text,
                    "is no symptom held here",
                    "did you mean " + String.join(", ", Nearest.of(text, names, 3)) + "? All of them: why alone"));
        });
    }
}
