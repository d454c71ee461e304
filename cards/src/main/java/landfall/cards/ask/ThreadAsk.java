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
import landfall.fault.Answer;
import landfall.quantity.UnitSystem;
import landfall.thread.CallOut;
import landfall.thread.LimitsOfSize;
import landfall.thread.MinorRounding;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Step;
import landfall.working.Trust;
import landfall.working.Worked;

/** {@code thread}: what a call-out allows. */
public final class ThreadAsk implements Question {
    static final Field<UnitSystem> UNITS = Field.optional("units", Kinds.UNITS, "inch");
    private static final Field<MinorRounding> ROUNDING = Field.optional(
            "rounding",
            Kinds.choice(Kinds.ordered("standard", MinorRounding.CURRENT, "printed", MinorRounding.PRINTED)),
            "printed");
    private static final Form FORM = Form.of("thread", TapFields.THREAD, ROUNDING, UNITS);

    private static final Rule PITCH = Rule.given("p", "mm", "pitch of the thread, unrounded");
    private static final Rule STARTS = Rule.given("k", "1", "starts");
    private static final Rule LEAD = new Rule(
            "L", "k * p", "mm", Source.of("derived", "lead of a thread"), Trust.DERIVED, "lead: advance in one turn");

    @Override
    public String noun() {
        return "thread";
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
        return TakenForGranted.told(FORM.judge(typed, UnitSystem.METRIC).map(ThreadAsk::document), typed);
    }

    /** The engine's record of what was typed, for drawings. */
    public Answer<Worked<LimitsOfSize>> limits(Map<String, String> typed) {
        return FORM.judge(typed, UnitSystem.METRIC).map(ThreadAsk::limits);
    }

    private static Worked<LimitsOfSize> limits(Entries entries) {
        return limits(entries.need(TapFields.THREAD), entries.get(ROUNDING).orElse(MinorRounding.CURRENT));
    }

    /** The engine's record with its working. */
    public static Worked<LimitsOfSize> limits(CallOut callOut, MinorRounding rounding) {
        return Worked.of(pen -> {
            lead(callOut.thread(), pen);
            return LimitsOfSize.of(callOut, rounding, pen);
        });
    }

    private static void lead(ScrewThread thread, Pen pen) {
        double p = pen.write(PITCH, thread.pitch().mm());
        double k = pen.write(STARTS, thread.lead().starts());
        pen.write(LEAD, k * p);
    }

    private static Document document(Entries entries) {
        CallOut callOut = entries.need(TapFields.THREAD);
        Worked<LimitsOfSize> worked = limits(entries);
        List<Step> steps = worked.steps();
        ThreadItems items = new ThreadItems(new Behind(steps));
        return new Document(
                "thread",
                callOut.normal(),
                entries.get(UNITS).orElse(callOut.thread().family().system()),
                items.of(worked.value()),
                steps,
                worked.value().cautions());
    }
}
