// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.cards.answer.Document;
import landfall.cards.card.FixtureCard;
import landfall.cards.card.FixtureFields;
import landfall.cards.card.TapCard;
import landfall.cards.card.TapFields;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.cards.readings.AlongCsv;
import landfall.cards.readings.AlongRow;
import landfall.cards.readings.ReadingsCsv;
import landfall.cards.readings.Row;
import landfall.dialling.Aim;
import landfall.dialling.AlongChamfer;
import landfall.dialling.Beside;
import landfall.dialling.DialFindings;
import landfall.dialling.Dialling;
import landfall.dialling.Reading;
import landfall.dialling.Readings;
import landfall.dialling.TapFacts;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.grind.CamProfile;
import landfall.grind.ChamferShape;
import landfall.grind.GrindSetup;
import landfall.grind.GrindWish;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** {@code dial}: from dial readings to what is wrong and what to turn. */
public final class DialAsk implements Question {
    private static final Kind<List<AlongRow>> ALONG_TABLE = new Kind<>(
            "a table: along_mm,reading_mm",
            AlongCsv::read,
            Kinds.ordered("type", "string", "description", "a table: along_mm,reading_mm"));
    private static final Kind<Place> PLACE_KIND = new Kind<>(
            "one of end, shank, flank, crest, chamfer-still, chamfer-working",
            (text, bare) -> ReadingsCsv.place(text),
            Kinds.ordered("type", "string"));
    private static final String EXAMPLE = "land,angle_deg,reading_mm\n1,0,0.00\n1,20,-0.17";
    private static final Field<List<Row>> READINGS = Field.needed("readings", table("readings"), EXAMPLE);
    private static final Field<List<Row>> REFERENCE = Field.optional("reference", table("reference"), EXAMPLE);
    private static final Field<List<AlongRow>> ALONG =
            Field.optional("along", ALONG_TABLE, "along_mm,reading_mm\n0,0.00\n6,0.03");
    private static final Field<Place> PLACE = Field.optional("place", PLACE_KIND, "chamfer-still");
    private static final Field<Length> RESOLUTION =
            Field.optional("resolution", Quantities.length(0.0001, 1), "0.01 mm");
    private static final Form FORM = Form.of("dial", READINGS, REFERENCE, ALONG, PLACE, RESOLUTION)
            .and(GrindAsk.SETUP)
            .called("dial")
            .easedOf("cam.", "wheel.");

    private static Kind<List<Row>> table(String field) {
        String words = "a table: land,angle_deg,reading_mm";
        return new Kind<>(
                words,
                (text, bare) -> ReadingsCsv.read(field, text, bare),
                Kinds.ordered("type", "string", "description", words));
    }

    @Override
    public String noun() {
        return "dial";
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public List<Given> given() {
        return List.of(
                new Given.TextFile("READINGS.csv", "", READINGS.path()),
                new Given.Card("CARD", "card", TapCard.FORM),
                new Given.Card("FIXTURE", "fixture", FixtureCard.FORM),
                new Given.TextFile("READINGS.csv", "reference", REFERENCE.path()),
                new Given.TextFile("ALONG.csv", "along", ALONG.path()));
    }

    @Override
    public Answer<Document> answer(Map<String, String> typed) {
        return dialled(typed).map(DialDocument::of);
    }

    /** The engine's findings, for pictures and for paper. */
    public Answer<Dialled> dialled(Map<String, String> typed) {
        Answer<Dialled> answer = FORM.judge(typed, GrindAsk.bare(typed))
                .then(entries -> TapCard.tap(entries).then(tap -> dialled(entries, tap, typed)));
        return answer instanceof Answer.Refused<Dialled> refused
                ? Answer.refused(
                        refused.findings().stream().map(DialAsk::byCode).toList())
                : answer;
    }

    /** Places by their codes, which are what a person can write. */
    private static Finding byCode(Finding finding) {
        if (!finding.field().contains("place")) {
            return finding;
        }
        String given = finding.given();
        String why = finding.why();
        for (Place place : Place.values()) {
            given = given.equals(place.name()) ? place.code() : given;
            why = why.replaceAll("\\b" + place.name() + "\\b", place.code());
        }
        return new Finding(finding.field(), given, why, finding.mend());
    }

    private static Answer<Dialled> dialled(Entries entries, Tap tap, Map<String, String> typed) {
        Answer<Optional<GrindSetup>> setup = setup(typed);
        return setup.then(found -> ask(entries, tap, found.orElse(null)).then(ask -> dialled(ask, entries, tap)));
    }

    private static Answer<Dialled> dialled(landfall.dialling.DialAsk ask, Entries entries, Tap tap) {
        UnitSystem system = tap.thread().family().system();
        UnitSystem units = entries.get(ThreadAsk.UNITS).orElse(system);
        try {
            Worked<DialFindings> worked = Dialling.of(ask);
            List<Caution> cautions = new ArrayList<>();
            if (worked.value().relief() != null) {
                wanted(entries, tap, cautions);
            }
            cautions.addAll(worked.value().cautions());
            if (!entries.has(RESOLUTION) && !entries.has(FixtureFields.RESOLUTION)) {
                cautions.add(0, assumed(system));
            }
            return Answer.of(new Dialled(tap, ask, worked, cautions, units));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static Caution assumed(UnitSystem system) {
        return new Caution(
                "dialDivisionAssumed",
                system == UnitSystem.INCH
                        ? "Dial division not told: 0.0005 in taken."
                        : "Dial division not told: 0.01 mm taken.",
                RESOLUTION.path());
    }

    /** The set-up that the readings are held against, where a fixture was told. */
    private static Answer<Optional<GrindSetup>> setup(Map<String, String> typed) {
        if (typed.keySet().stream().noneMatch(path -> path.startsWith("cam."))) {
            return Answer.of(Optional.empty());
        }
        Map<String, String> ofGrind = new LinkedHashMap<>(typed);
        ofGrind.keySet().retainAll(GrindAsk.SETUP.paths());
        return new GrindAsk().setup(ofGrind).map(worked -> Optional.of(worked.value()));
    }

    private static Answer<landfall.dialling.DialAsk> ask(Entries entries, Tap tap, @Nullable GrindSetup setup) {
        Length division = division(entries, tap.thread().family().system());
        int flutes = tap.flutes().count();
        List<String> places = places(entries.need(READINGS));
        if (entries.get(PLACE).isEmpty() && places.size() > 1) {
            return Answer.refused(new Finding(
                    PLACE.path(),
                    String.join(", ", places),
                    "are the places of these readings; a dial is answered for one place at a time",
                    "give place %s first, then %s"
                            .formatted(places.get(0), String.join(", ", places.subList(1, places.size())))));
        }
        Answer<Readings> readings =
                Readings.of(list(entries.need(READINGS), entries.get(PLACE), Place.CHAMFER_STILL), division, flutes);
        Answer<Optional<Readings>> reference = entries.get(REFERENCE)
                .map(rows -> Readings.of(list(rows, Optional.empty(), Place.CREST), division, flutes)
                        .map(Optional::of))
                .orElseGet(() -> Answer.of(Optional.empty()));
        return readings.then(main -> reference
                .then(read -> beside(entries, read.orElse(null), tap, setup))
                .then(beside -> made(main, beside, tap, setup)));
    }

    /** The working relief that the tap is held against: as asked for, by the material, or the usual one. */
    private static Angle wanted(Entries entries, Tap tap, List<Caution> assumed) {
        GrindWish wish = new GrindWish(
                entries.get(GrindAsk.WORKING).orElse(null),
                entries.get(TapFields.CUTS).orElse(null),
                null,
                null,
                null);
        return ChamferShape.of(tap, wish, assumed, Pen.NONE).relief().working();
    }

    private static Answer<landfall.dialling.DialAsk> made(
            Readings main, Beside beside, Tap tap, @Nullable GrindSetup setup) {
        CamProfile profile = setup == null
                ? CamProfile.straight()
                : CamProfile.of(setup.fixture().cam(), setup.motion().phase().bareMargin());
        try {
            return Answer.of(new landfall.dialling.DialAsk(main, profile, TapFacts.of(tap), beside));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    /** What was read or asked beside the lands; one place alone along the chamfer is refused. */
    private static Answer<Beside> beside(
            Entries entries, @Nullable Readings reference, Tap tap, @Nullable GrindSetup setup) {
        try {
            Length division = division(entries, tap.thread().family().system());
            AlongChamfer along = entries.get(ALONG)
                    .map(rows -> new AlongChamfer(
                            rows.stream()
                                    .map(row -> new AlongChamfer.Spot(row.along(), row.value()))
                                    .toList(),
                            division))
                    .orElse(null);
            Aim aim = setup == null
                    ? null
                    : Aim.of(setup, entries.get(GrindAsk.FOUND).orElse(null));
            return Answer.of(new Beside(reference, along, aim, wanted(entries, tap, new ArrayList<>())));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static Length division(Entries entries, UnitSystem system) {
        return entries.get(RESOLUTION)
                .or(() -> entries.get(FixtureFields.RESOLUTION))
                .orElse(system == UnitSystem.INCH ? Length.ofInch(0.0005) : Length.ofMm(0.01));
    }

    private static List<String> places(List<Row> rows) {
        return rows.stream()
                .map(row -> row.place().orElse(Place.CHAMFER_STILL).code())
                .distinct()
                .toList();
    }

    /** The readings of the place asked for; a row that names none belongs to it. */
    private static List<Reading> list(List<Row> rows, Optional<Place> asked, Place usual) {
        List<Reading> list = new ArrayList<>();
        for (Row row : rows) {
            Place place = row.place().or(() -> asked).orElse(usual);
            if (asked.isEmpty() || asked.get() == place) {
                list.add(new Reading(row.land(), row.angle(), row.value(), place));
            }
        }
        return list;
    }
}
