// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.List;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.card.TapFields;
import landfall.cards.form.Entries;
import landfall.cards.form.Form;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.gauge.GaugeWish;
import landfall.gauge.Gauging;
import landfall.thread.CallOut;
import landfall.verdict.Examination;

/** {@code gauge}: how a thread is gauged, what a measurement says, and the verdict on what lies on the bench. */
public final class GaugeAsk implements Question {
    private static final Form FORM = Form.of(
            "gauge",
            TapFields.THREAD,
            GaugeFields.WIRE,
            GaugeFields.PITCH_DIAMETER,
            GaugeFields.OVER,
            GaugeFields.FLUTES,
            GaugeFields.READING,
            GaugeFields.HEIGHT,
            GaugeFields.BEARING,
            GaugeFields.CREST,
            BenchFields.PART,
            BenchFields.MARKING,
            BenchFields.TAP_MIN,
            BenchFields.TAP_MAX,
            BenchFields.RUN_OUT,
            BenchFields.RINGS,
            BenchFields.PIN,
            BenchFields.GO,
            BenchFields.GO_TURNS,
            BenchFields.NOT_GO_TURNS,
            BenchFields.DEPTH,
            BenchFields.STAND_OFF,
            GaugeFields.UNCERTAINTY,
            GaugeFields.WIRE_UNCERTAINTY,
            GaugeFields.CREST_UNCERTAINTY,
            GaugeFields.ANGLE_UNCERTAINTY,
            ThreadAsk.UNITS);

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

    /** What is drawn: the gauging, and the readings behind it. */
    public record Told(Gauging gauging, GaugeWish wish) {}

    /** The engine's records of what was typed, for drawings. */
    public Answer<Told> told(Map<String, String> typed) {
        return FORM.judge(typed, GrindAsk.bare(typed))
                .then(entries -> Gauging.of(entries.need(TapFields.THREAD), GaugeFields.wish(entries))
                        .map(worked -> new Told(worked.value(), GaugeFields.wish(entries))));
    }

    private static Answer<Document> document(Entries entries) {
        List<Finding> findings = GaugeFields.together(entries);
        findings.addAll(BenchFields.together(entries));
        if (!findings.isEmpty()) {
            return Answer.refused(findings);
        }
        CallOut callOut = entries.need(TapFields.THREAD);
        var asked = new Examination.Asked(
                GaugeFields.wish(entries),
                entries.get(BenchFields.STAND_OFF).orElse(null),
                GaugeFields.uncertainty(entries),
                BenchFields.bench(entries));
        return Examination.of(callOut, asked)
                .map(worked -> new Document(
                        "gauge",
                        callOut.normal(),
                        entries.get(ThreadAsk.UNITS)
                                .orElse(callOut.thread().family().system()),
                        new GaugeItems(new Behind(worked.steps())).of(worked.value()),
                        worked.steps(),
                        GaugeCautions.of(worked.value())));
    }
}
