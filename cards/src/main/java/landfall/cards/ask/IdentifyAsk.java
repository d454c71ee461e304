// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.identity.Candidate;
import landfall.identity.Identification;
import landfall.identity.Sighting;
import landfall.identity.TellApart;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.thread.Hand;
import landfall.working.Worked;

/** {@code identify}: what an unmarked tap may be. */
public final class IdentifyAsk implements Question {
    private static final Kind<Double> TPI = Quantities.number(0.5, 200);
    private static final Field<Length> MAJOR =
            Field.needed("major", Quantities.diameter(0.3, 400), "0.2545 in").worded("identify.major");
    private static final Field<Double> THREADS =
            Field.optional("tpi", TPI, "20").worded("identify.tpi");
    private static final Field<Length> PITCH =
            Field.optional("pitch", Quantities.length(0.05, 50), "1.25 mm").worded("identify.pitch");
    private static final Field<Length> SHANK =
            Field.optional("shank", Quantities.diameter(0.5, 400), "8 mm").worded("identify.shank");
    private static final Field<Integer> FLUTES =
            Field.optional("flutes", Kinds.count(1, 16), "4").worded("identify.flutes");
    private static final Field<Angle> ANGLE =
            Field.optional("flank-angle", Quantities.angle(20, 90), "60 deg").worded("identify.flank-angle");
    private static final Field<Integer> RINGS =
            Field.optional("rings", Kinds.count(0, 3), "1").worded("identify.rings");
    private static final Field<Hand> HAND = Field.optional(
                    "hand", Kinds.<Hand>choice(Kinds.ordered("right", Hand.RIGHT, "left", Hand.LEFT)), "right")
            .worded("identify.hand");
    private static final Field<Integer> STARTS =
            Field.optional("starts", Kinds.count(1, 12), "2").worded("identify.starts");
    private static final Field<Angle> LEAD_ANGLE =
            Field.optional("lead-angle", Quantities.angle(0.2, 45), "3.4 deg").worded("identify.lead-angle");
    private static final Field<Length> UNCERTAINTY =
            Field.optional("uncertainty", Quantities.length(0, 2), "0.02 mm").worded("identify.uncertainty");
    private static final Form FORM = Form.of(
            "identify",
            MAJOR,
            THREADS,
            PITCH,
            SHANK,
            FLUTES,
            ANGLE,
            RINGS,
            HAND,
            STARTS,
            LEAD_ANGLE,
            UNCERTAINTY,
            ThreadAsk.UNITS);

    private static final Length USUAL_UNCERTAINTY = Length.ofMm(0.02);

    @Override
    public String noun() {
        return "identify";
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public List<Given> given() {
        return List.of();
    }

    @Override
    public Answer<Document> answer(Map<String, String> typed) {
        UnitSystem system = typed.containsKey(THREADS.path()) ? UnitSystem.INCH : UnitSystem.METRIC;
        return FORM.judge(typed, system).then(entries -> document(entries, system));
    }

    private static Answer<Document> document(Entries entries, UnitSystem system) {
        if (entries.get(THREADS).isPresent() == entries.get(PITCH).isPresent()) {
            return Answer.refused(pitchOnce(entries));
        }
        try {
            Worked<Identification> worked = Identification.of(sighting(entries));
            List<Caution> cautions = new ArrayList<>(worked.value().cautions());
            if (entries.get(UNCERTAINTY).isEmpty()) {
                cautions.add(
                        0,
                        new Caution(
                                "uncertaintyAssumed",
                                "Uncertainty of the diameter not told: %s taken.".formatted(USUAL_UNCERTAINTY.words()),
                                "uncertainty"));
            }
            return Answer.of(new Document(
                    "identify",
                    entries.need(MAJOR).words(),
                    entries.get(ThreadAsk.UNITS).orElse(system),
                    items(worked),
                    worked.steps(),
                    cautions));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    /** What is drawn: the candidates, and what was measured. */
    public record Told(Identification found, Sighting sighting) {}

    /** The engine's records of what was typed, for drawings. */
    public Answer<Told> told(Map<String, String> typed) {
        UnitSystem system = typed.containsKey(THREADS.path()) ? UnitSystem.INCH : UnitSystem.METRIC;
        return FORM.judge(typed, system).then(IdentifyAsk::told);
    }

    private static Answer<Told> told(Entries entries) {
        if (entries.get(THREADS).isPresent() == entries.get(PITCH).isPresent()) {
            return Answer.refused(pitchOnce(entries));
        }
        try {
            Sighting sighting = sighting(entries);
            return Answer.of(new Told(Identification.of(sighting).value(), sighting));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static Finding pitchOnce(Entries entries) {
        return new Finding(
                "pitch",
                entries.get(PITCH).isPresent() ? "both pitch and tpi" : "neither pitch nor tpi",
                "must be told once",
                "give pitch, the distance from crest to crest, or tpi, the threads in an inch");
    }

    private static Sighting sighting(Entries entries) {
        Length pitch = entries.get(PITCH).orElseGet(() -> Length.ofInch(1 / entries.need(THREADS)));
        var seen = new Sighting.Seen(
                entries.get(SHANK).orElse(null),
                entries.get(FLUTES).orElse(null),
                entries.get(ANGLE).orElse(null),
                entries.get(RINGS).orElse(null),
                new Sighting.Helix(
                        entries.get(HAND).orElse(Hand.RIGHT),
                        entries.get(STARTS).orElse(null),
                        entries.get(LEAD_ANGLE).orElse(null)));
        return new Sighting(entries.need(MAJOR), pitch, entries.get(UNCERTAINTY).orElse(USUAL_UNCERTAINTY), seen);
    }

    private static List<Item> items(Worked<Identification> worked) {
        Behind behind = new Behind(worked.steps());
        Identification found = worked.value();
        List<Item.Group> rows = new ArrayList<>();
        for (Candidate candidate : found.candidates()) {
            rows.add(Item.Group.of(
                    "candidate",
                    new Item.Text("callout", candidate.name()),
                    behind.figure("score", candidate.score(), Unit.PURE, "p"),
                    behind.figure("overNominal", candidate.overNominal(), "x"),
                    new Item.Text("why", candidate.why())));
        }
        List<Item> items = new ArrayList<>();
        items.add(new Item.Rows("candidates", rows));
        items.add(behind.figure("other", found.other(), Unit.PURE, "p_other"));
        TellApart apart = found.tellApart();
        if (apart != null) {
            items.add(new Item.Text("tellApart", apart.words()));
            items.add(Item.Group.of(
                    "nextLook",
                    new Item.Text("measure", apart.measure()),
                    new Item.Text("first", apart.first()),
                    new Item.Text("second", apart.second())));
        }
        return items;
    }
}
