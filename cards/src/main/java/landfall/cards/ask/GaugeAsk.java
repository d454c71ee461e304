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
import landfall.cards.form.Quantities;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.gauge.GaugeWish;
import landfall.gauge.Gauging;
import landfall.gauge.VAnvil;
import landfall.quantity.Length;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** {@code gauge}: how a thread is gauged, and what a measurement over wires or in a V-anvil says. */
public final class GaugeAsk implements Question {
    private static final double GREATEST_MM = 500;
    private static final Field<Length> WIRE = length("wire", "0.0289 in");
    private static final Field<Length> PITCH_DIAMETER = length("pitch-diameter", "0.2190 in");
    private static final Field<Length> OVER = length("over", "0.2625 in");
    private static final Field<Integer> FLUTES = Field.optional("flutes", Kinds.count(2, 16), "3");
    private static final Field<Length> READING = length("reading", "10.2 mm");
    private static final Field<Length> HEIGHT = length("height", "15.3 mm");
    private static final Field<Length> CREST = length("crest", "10.05 mm");
    private static final Form FORM = Form.of(
            "gauge", TapFields.THREAD, WIRE, PITCH_DIAMETER, OVER, FLUTES, READING, HEIGHT, CREST, ThreadAsk.UNITS);

    private static Field<Length> length(String path, String example) {
        return Field.optional(path, Quantities.length(0, GREATEST_MM), example);
    }

    @Override
    public String noun() {
        return "gauge";
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
        return TakenForGranted.told(FORM.judge(typed, GrindAsk.bare(typed)).then(GaugeAsk::document), typed);
    }

    private static Answer<Document> document(Entries entries) {
        List<Finding> findings = together(entries);
        if (!findings.isEmpty()) {
            return Answer.refused(findings);
        }
        var callOut = entries.need(TapFields.THREAD);
        Answer<Worked<Gauging>> gauging = Gauging.of(callOut, wish(entries));
        return gauging.map(worked -> new Document(
                "gauge",
                callOut.normal(),
                entries.get(ThreadAsk.UNITS).orElse(callOut.thread().family().system()),
                new GaugeItems(new Behind(worked.steps())).of(worked.value()),
                worked.steps(),
                worked.value().cautions()));
    }

    /** What only makes sense together, or only apart. */
    private static List<Finding> together(Entries entries) {
        List<Finding> findings = new ArrayList<>();
        if (entries.get(OVER).isPresent() && entries.get(PITCH_DIAMETER).isPresent()) {
            findings.add(new Finding(
                    "over",
                    entries.need(OVER).words(),
                    "cannot stand beside pitch-diameter: each gives the other",
                    "leave one of the two out"));
        }
        boolean reading = entries.get(READING).isPresent();
        boolean height = entries.get(HEIGHT).isPresent();
        if (reading && height) {
            findings.add(new Finding(
                    "height",
                    entries.need(HEIGHT).words(),
                    "cannot stand beside reading: one scale or the other",
                    "give reading for a scale in diameters, height for a plain one"));
        }
        boolean flutes = entries.get(FLUTES).isPresent();
        boolean crest = entries.get(CREST).isPresent();
        if ((reading || height || flutes || crest) && !((reading || height) && flutes && crest)) {
            findings.add(new Finding(
                    "reading",
                    "flutes, reading or height, and crest: not all of them",
                    "must be given together for a tap in a V-anvil",
                    "give flutes, reading and crest, or none of them"));
        }
        return findings;
    }

    private static GaugeWish wish(Entries entries) {
        return new GaugeWish(
                entries.get(WIRE).orElse(null),
                entries.get(PITCH_DIAMETER).orElse(null),
                entries.get(OVER).orElse(null),
                anvil(entries));
    }

    private static GaugeWish.@Nullable InVAnvil anvil(Entries entries) {
        if (entries.get(FLUTES).isEmpty()) {
            return null;
        }
        VAnvil.Reading reading = entries.get(READING)
                .map(scale -> new VAnvil.Reading(scale, false))
                .orElseGet(() -> new VAnvil.Reading(entries.need(HEIGHT), true));
        return new GaugeWish.InVAnvil(entries.need(FLUTES), reading, entries.need(CREST));
    }
}
