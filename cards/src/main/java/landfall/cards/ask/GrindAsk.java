// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.card.FixtureCard;
import landfall.cards.card.TapCard;
import landfall.cards.card.TapFields;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.envelope.Errors;
import landfall.envelope.GrindRun;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.grind.AsSet;
import landfall.grind.Fixture;
import landfall.grind.GrindSetup;
import landfall.grind.GrindWish;
import landfall.grind.WheelDirection;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.regrind.LifeWish;
import landfall.regrind.SharpeningsLeft;
import landfall.tap.Tap;
import landfall.tap.Wear;
import landfall.thread.callout.CallOuts;
import landfall.working.Worked;

/** {@code grind}: how to set the fixture to sharpen a tap on its chamfer. */
public final class GrindAsk implements Question {
    private static final Kind<Length> CHIP_DEPTH = Quantities.length(0, 20);
    static final Field<Angle> WORKING = Field.optional("working-relief", Quantities.angle(0, 45), "6 deg");
    static final Field<Wear> WEAR = Field.optional("wear", WearKind.WEAR, "due");
    static final Field<Length> CHIP = Field.optional("chip", CHIP_DEPTH, "0.3 mm");
    static final Field<Angle> FOUND = Field.optional("found-relief", Quantities.angle(-10, 45), "5 deg");

    /** Degrees. */
    public static final double LEAST_SWIVEL = 0.5;

    /** Degrees. */
    public static final double GREATEST_SWIVEL = 60;

    /** Millimetres. */
    public static final double GREATEST_RISE = 100;

    /** What stands on the fixture, where that is not what the set-up asks for. */
    public static final Field<Angle> SWIVEL =
            Field.optional("swivel", Quantities.angle(LEAST_SWIVEL, GREATEST_SWIVEL), "9.25 deg");

    public static final Field<Length> AXIAL =
            Field.optional("axial-rise", Quantities.length(0, GREATEST_RISE), "1.2 mm");
    public static final Field<Length> RADIAL =
            Field.optional("radial-rise", Quantities.length(0, GREATEST_RISE), "0.43 mm");

    private static final Field<WheelDirection> DIRECTION = Field.optional(
            "direction",
            Kinds.<WheelDirection>choice(Kinds.ordered(
                    WheelDirection.INTO_EDGE.code(),
                    WheelDirection.INTO_EDGE,
                    WheelDirection.OFF_EDGE.code(),
                    WheelDirection.OFF_EDGE)),
            "into-edge");

    /** What a set-up is made of; the run asks for more. */
    static final Form SETUP = TapCard.FORM
            .and(FixtureCard.FORM)
            .and(Form.of("grind", WORKING, WEAR, CHIP, FOUND, SWIVEL, AXIAL, RADIAL, DIRECTION, ThreadAsk.UNITS))
            .called("grind");

    private static final Form FORM = SETUP.and(RunFields.FORM);

    private final boolean runs;

    public GrindAsk() {
        this(true);
    }

    private GrindAsk(boolean runs) {
        this.runs = runs;
    }

    /** The same question answered by its closed forms alone, without the numerical run: for many set-ups at once. */
    public static GrindAsk closedForms() {
        return new GrindAsk(false);
    }

    @Override
    public String noun() {
        return "grind";
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public List<Given> given() {
        return List.of(new Given.Card("CARD", TapCard.FORM), new Given.Card("FIXTURE", "fixture", FixtureCard.FORM));
    }

    @Override
    public Answer<Document> answer(Map<String, String> typed) {
        return judge(typed)
                .then(entries -> setup(entries)
                        .then(worked -> RunFields.errors(entries, worked.value())
                                .map(errors -> document(worked, errors, entries))));
    }

    private Document document(Worked<GrindSetup> worked, Errors errors, Entries entries) {
        UnitSystem units = entries.get(ThreadAsk.UNITS)
                .orElse(entries.need(TapFields.THREAD).thread().family().system());
        LifeWish wish = new LifeWish(entries.get(WEAR).orElse(Wear.DUE), null, null);
        Answer<Worked<SharpeningsLeft>> left = SharpeningsLeft.of(worked.value().tap(), wish);
        GrindRan ran = runs ? new GrindRan(GrindRun.of(worked.value(), errors), RunFields.assumed(entries)) : null;
        Document document = GrindDocument.of(
                worked,
                ran,
                left.map(Worked::value),
                units,
                entries.get(DIRECTION).orElse(null));
        return AsSetItems.with(document, worked.value(), read(entries));
    }

    private static AsSet.Read read(Entries entries) {
        return new AsSet.Read(
                entries.get(SWIVEL).orElse(null),
                entries.get(AXIAL).orElse(null),
                entries.get(RADIAL).orElse(null));
    }

    /** What was read off the fixture. */
    public static Answer<AsSet.Read> read(Map<String, String> typed) {
        return judge(typed).map(GrindAsk::read);
    }

    /** The engine's set-up with its working, for paper. */
    public Answer<Worked<GrindSetup>> setup(Map<String, String> typed) {
        return judge(typed).then(GrindAsk::setup);
    }

    /** The set-up with what is amiss in it, for pictures, bodies and paper. */
    public Answer<GrindTrial> trial(Map<String, String> typed) {
        return judge(typed)
                .then(entries -> setup(entries)
                        .then(worked -> RunFields.errors(entries, worked.value())
                                .map(errors -> new GrindTrial(worked.value(), errors))));
    }

    private static Answer<Entries> judge(Map<String, String> typed) {
        return FORM.judge(typed, bare(typed));
    }

    /** Bare decimals are of the call-out's system; metric until the call-out can be read. */
    public static UnitSystem bare(Map<String, String> typed) {
        String callOut = typed.getOrDefault(TapFields.THREAD.path(), "");
        return CallOuts.read(callOut) instanceof Answer.Of<landfall.thread.CallOut> of
                ? of.value().thread().family().system()
                : UnitSystem.METRIC;
    }

    private static Answer<Worked<GrindSetup>> setup(Entries entries) {
        Answer<Tap> tap = TapCard.tap(entries);
        Answer<Fixture> fixture = FixtureCard.fixture(entries);
        List<Finding> findings = new ArrayList<>(tap.findings());
        findings.addAll(fixture.findings());
        if (tap instanceof Answer.Of<Tap> of && !fixture.findings().isEmpty()) {
            findings.addAll(FixtureCard.misfits(of.value(), entries));
        }
        if (!findings.isEmpty()) {
            return Answer.refused(findings);
        }
        return GrindSetup.of(tap.orThrow(), fixture.orThrow(), wish(entries));
    }

    private static GrindWish wish(Entries entries) {
        return new GrindWish(
                entries.get(WORKING).orElse(null),
                entries.get(TapFields.CUTS).orElse(null),
                entries.get(WEAR).orElse(null),
                entries.get(CHIP).orElse(null),
                entries.get(FOUND).orElse(null));
    }
}
