// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.card.TapFields;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kinds;
import landfall.choice.TapAdvice;
import landfall.choice.TapWish;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** {@code tap}: which tap suits a hole, and will it reach. */
public final class TapAsk implements Question {
    private static final Field<Boolean> BY_HAND =
            Field.optional("hand", Kinds.YES_NO, "yes").worded("by-hand");
    private static final Field<Boolean> MACHINE = Field.optional("machine", Kinds.YES_NO, "yes");
    static final Field<Boolean> SPINDLE =
            Field.optional("spindle", Kinds.choice(Kinds.ordered("vertical", false, "horizontal", true)), "vertical");
    private static final Form FORM = Form.of(
            "tap",
            TapFields.THREAD,
            HoleAsk.MATERIAL,
            HoleAsk.DEPTH,
            HoleAsk.BLIND,
            HoleAsk.THROUGH,
            BY_HAND,
            MACHINE,
            SPINDLE,
            ThreadAsk.UNITS);

    @Override
    public String noun() {
        return "tap";
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
        Answer<Document> document = judge(typed)
                .then(entries -> advice(entries)
                        .map(worked -> TapDocument.of(
                                worked,
                                entries.get(ThreadAsk.UNITS)
                                        .orElse(entries.need(TapFields.THREAD)
                                                .thread()
                                                .family()
                                                .system()))));
        return TakenForGranted.told(document, typed);
    }

    /** The engine's advice with its working, for paper. */
    public Answer<Worked<TapAdvice>> advice(Map<String, String> typed) {
        return judge(typed).then(TapAsk::advice);
    }

    private static Answer<Entries> judge(Map<String, String> typed) {
        return FORM.judge(typed, GrindAsk.bare(typed)).then(entries -> {
            List<Finding> findings = new ArrayList<>();
            both(entries, HoleAsk.BLIND, HoleAsk.THROUGH, findings);
            both(entries, BY_HAND, MACHINE, findings);
            return findings.isEmpty() ? Answer.of(entries) : Answer.refused(findings);
        });
    }

    private static void both(Entries entries, Field<Boolean> one, Field<Boolean> other, List<Finding> findings) {
        if (entries.get(one).orElse(false) && entries.get(other).orElse(false)) {
            findings.add(new Finding(
                    other.path(), one.path() + " and " + other.path(), "cannot both be", "leave one of the two out"));
        }
    }

    private static Answer<Worked<TapAdvice>> advice(Entries entries) {
        return TapAdvice.of(new TapWish(
                entries.need(TapFields.THREAD),
                entries.get(HoleAsk.MATERIAL).orElse(null),
                new TapWish.Place(entries.get(HoleAsk.DEPTH).orElse(null), HoleAsk.end(entries)),
                new TapWish.Drive(byHand(entries), entries.get(SPINDLE).orElse(null))));
    }

    private static @Nullable Boolean byHand(Entries entries) {
        if (entries.get(BY_HAND).orElse(false)) {
            return true;
        }
        return entries.get(MACHINE).orElse(false) ? Boolean.FALSE : null;
    }
}
