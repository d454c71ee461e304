// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cards.card.TapCard;
import landfall.cards.card.TapFields;
import landfall.cards.entry.LengthEntry;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.grind.GrindWish;
import landfall.grind.Holding;
import landfall.quantity.Length;
import landfall.quantity.Measured;
import landfall.quantity.UnitSystem;
import landfall.regrind.Check;
import landfall.regrind.Inspection;
import landfall.regrind.Looked;
import landfall.regrind.Reground;
import landfall.tap.Tap;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Step;
import landfall.working.Trust;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** {@code inspect}: whether a reground tap is right, by instruments that a shop has. */
public final class InspectAsk implements Question {
    private static final int MOST_LANDS = 16;
    static final Kind<List<Length>> LENGTHS = new Kind<>(
            "a length for each land, a semicolon between: 5.05; 5.02; 5.07 mm",
            InspectAsk::lengths,
            Kinds.ordered("type", "string"));
    private static final Source BOUND = Source.of("derived", "docs/methods/regrind.md");
    private static final Rule NO_OVERSIZE =
            new Rule("o_0", "0", "mm", BOUND, Trust.ESTIMATE, "over its own size the tap cuts at least: held stiffly");
    private static final Rule MOST_OVERSIZE = Rule.given(
            "o_1", "mm", "over its own size the tap cuts at most: the total run-out, led by its chamfer and floating");
    private static final Field<Length> GROUND_BACK =
            Field.optional("ground-back", Quantities.length(0, 500), "0.19 mm");
    private static final Field<List<Length>> CHAMFERS = Field.optional("chamfer-lengths", LENGTHS, "5.05; 5.02; 5.07");
    private static final Field<List<Length>> FALLS = Field.optional("falls", LENGTHS, "0.26; 0.27; 0.26");
    private static final Field<Length> RUN_OUT =
            Field.optional("run-out", Quantities.length(0, 5), "0.02 mm").worded("inspect.run-out");
    private static final Field<Length> PITCH_DIAMETER = Field.optional(
                    "pitch-diameter", Quantities.length(0, 500), "7.23 mm")
            .worded("inspect.pitch-diameter");
    private static final Field<Length> POINT = Field.optional("point-diameter", Quantities.length(0, 500), "6.37 mm");
    private static final Field<Length> UNCERTAINTY =
            Field.optional("uncertainty", Quantities.length(0, 2), "0.005 mm").worded("inspect.uncertainty");
    private static final Field<Boolean> EDGES = Field.optional("edges-sharp", Kinds.YES_NO, "yes");
    private static final Field<Boolean> FACES = Field.optional("no-burn", Kinds.YES_NO, "yes");
    private static final Field<Boolean> HEEL = Field.optional("heel-clear", Kinds.YES_NO, "yes");
    private static final Field<Boolean> GO = Field.optional("trial-go", Kinds.YES_NO, "yes");
    private static final Field<Double> NOT_GO = Field.optional("trial-not-go-turns", Quantities.number(0, 200), "0.5");
    private static final Form FORM = TapCard.FORM
            .and(Form.of(
                    "inspect",
                    GROUND_BACK,
                    CHAMFERS,
                    FALLS,
                    RUN_OUT,
                    PITCH_DIAMETER,
                    POINT,
                    UNCERTAINTY,
                    GrindAsk.WORKING,
                    EDGES,
                    FACES,
                    HEEL,
                    GO,
                    NOT_GO,
                    ThreadAsk.UNITS))
            .called("inspect");

    private static Answer<List<Length>> lengths(String text, UnitSystem bare) {
        List<Length> lengths = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (String part : text.split(";", MOST_LANDS + 1)) {
            Answer<Length> read = LengthEntry.read(part.strip(), bare);
            findings.addAll(read.findings());
            if (read instanceof Answer.Of<Length> of) {
                lengths.add(of.value());
            }
        }
        return findings.isEmpty() ? Answer.of(lengths) : Answer.refused(findings);
    }

    @Override
    public String noun() {
        return "inspect";
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public List<Given> given() {
        return List.of(new Given.Card("CARD", TapCard.FORM));
    }

    @Override
    public Answer<Document> answer(Map<String, String> typed) {
        return FORM.judge(typed, GrindAsk.bare(typed))
                .then(entries -> TapCard.tap(entries).then(tap -> answer(tap, entries)));
    }

    private static Answer<Document> answer(Tap tap, Entries entries) {
        try {
            Length back = entries.get(GROUND_BACK).orElse(Length.ZERO);
            Length uncertainty = entries.get(UNCERTAINTY).orElse(Length.ZERO);
            Measured point = entries.get(POINT)
                    .map(value -> new Measured(value, uncertainty))
                    .orElse(null);
            Worked<Inspection> worked = Inspection.of(
                    tap, reground(entries), new Inspection.Asked(back, point, wish(entries), looked(entries)));
            return Answer.of(document(tap, worked, entries));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static Looked looked(Entries entries) {
        Looked.Trial trial = new Looked.Trial(
                entries.get(GO).orElse(null), entries.get(NOT_GO).orElse(null));
        return new Looked(
                entries.get(EDGES).orElse(null),
                entries.get(FACES).orElse(null),
                entries.get(HEEL).orElse(null),
                trial);
    }

    private static GrindWish wish(Entries entries) {
        return new GrindWish(
                entries.get(GrindAsk.WORKING).orElse(null),
                entries.get(TapFields.CUTS).orElse(null),
                null,
                null,
                null);
    }

    private static Reground reground(Entries entries) {
        Length uncertainty = entries.get(UNCERTAINTY).orElse(Length.ZERO);
        return new Reground(
                entries.get(CHAMFERS).orElse(List.of()),
                uncertainty,
                entries.get(FALLS).orElse(List.of()),
                entries.get(RUN_OUT).orElse(null),
                measured(entries, uncertainty));
    }

    private static @Nullable Measured measured(Entries entries, Length uncertainty) {
        return entries.get(PITCH_DIAMETER)
                .map(value -> new Measured(value, uncertainty))
                .orElse(null);
    }

    private static List<Item.Group> checks(Inspection inspection) {
        List<Item.Group> rows = new ArrayList<>();
        for (Check check : inspection.checks()) {
            var verdict = check.verdict();
            rows.add(Item.Group.of(
                    "check",
                    new Item.Text("check", check.code()),
                    new Item.Text(
                            "verdict",
                            verdict == null ? "to do" : verdict.name().toLowerCase(Locale.ROOT)),
                    new Item.Text("found", check.found().isEmpty() ? "not measured" : check.found()),
                    new Item.Text("rule", check.rule()),
                    new Item.Text("with", check.with())));
        }
        return rows;
    }

    private static Document document(Tap tap, Worked<Inspection> worked, Entries entries) {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("callout", tap.callOut().normal()));
        Holding holding = Holding.of(tap);
        items.add(Item.Group.of(
                "hold",
                new Item.Text("way", holding.way().name().toLowerCase(Locale.ROOT)),
                new Item.Text("why", holding.words())));
        items.add(new Item.Rows("checks", checks(worked.value())));
        List<Step> steps = new ArrayList<>(worked.steps());
        Double worst = worked.value().worstShare();
        if (worst != null) {
            items.add(new Behind(steps).figure("largestChip", worst, Unit.PURE, "m_h"));
        }
        Length oversize = worked.value().oversize();
        if (oversize != null) {
            steps.add(new Step(NO_OVERSIZE, 0));
            steps.add(new Step(MOST_OVERSIZE, oversize.mm()));
            items.add(new Item.Range(
                    "oversize", new Item.Point(0, NO_OVERSIZE), Item.Point.of(oversize, MOST_OVERSIZE), Unit.LENGTH));
        }
        return new Document(
                "inspect",
                tap.callOut().normal(),
                entries.get(ThreadAsk.UNITS).orElse(tap.thread().family().system()),
                items,
                steps,
                worked.value().cautions());
    }
}
