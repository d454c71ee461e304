// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.card.TapCard;
import landfall.cards.card.TapFields;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Quantities;
import landfall.chip.Evenness;
import landfall.cut.CutForecast;
import landfall.cut.CutWish;
import landfall.cut.CutWish.Grip;
import landfall.cut.CutWish.Holding;
import landfall.cut.CutWish.How;
import landfall.cut.CutWish.Opening;
import landfall.cut.Driven;
import landfall.cut.Driven.Drive;
import landfall.cut.Driven.Holder;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.material.CuttingFluid;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.tap.Tap;
import landfall.tap.Wear;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** {@code cut}: chip, torque, strength, margin, chip room, speed and time of one tap in one hole. */
public final class CutAsk implements Question {
    private static final Field<WorkMaterial> CUTS =
            Field.needed(TapFields.CUTS.path(), TapFields.CUTS.kind(), TapFields.CUTS.example());
    private static final Field<Length> HOLE =
            Field.needed("hole", Quantities.diameter(0.1, 500), "6.8 mm").worded("hole-to-tap");
    private static final Field<Length> DEPTH = Field.needed("depth", Quantities.length(0.05, 2000), "12 mm");
    private static final Field<Wear> WEAR =
            Field.optional("wear", WearKind.WEAR, "fresh").worded("wear-to-cut");
    private static final Field<CuttingFluid> FLUID =
            Field.optional("fluid", WorkKinds.codes(CuttingFluid.values(), CuttingFluid::code), "sulphur-oil");
    private static final Field<Drive> DRIVE =
            Field.optional("drive", WorkKinds.codes(Drive.values(), CutAsk::code), "hand");
    private static final Field<Holder> HOLDER =
            Field.optional("holder", WorkKinds.codes(Holder.values(), CutAsk::code), "float");
    private static final Field<Length> BAR = Field.optional("bar", Quantities.length(5, 3000), "200 mm");
    private static final Field<Length> FEED = Field.optional("feed", Quantities.length(0.01, 100), "1.22 mm");
    private static final Field<List<Length>> HEIGHTS =
            Field.optional("heights", InspectAsk.LENGTHS, "0.02; 0; -0.01 mm");
    private static final Field<Grip> HELD =
            Field.optional("held", WorkKinds.codes(Grip.values(), CutAsk::code), "square");
    private static final Field<Length> SQUARE = Field.optional("square", Quantities.length(0.3, 200), "6.2 mm");
    private static final Field<Length> RUN_OUT = Field.optional("run-out", Quantities.length(0, 2), "0.02 mm");

    private static final Form FORM = withMaterialNeeded(TapCard.FORM)
            .and(Form.of(
                    "cut",
                    HOLE,
                    DEPTH,
                    WEAR,
                    FLUID,
                    HoleAsk.BLIND,
                    HoleAsk.THROUGH,
                    DRIVE,
                    HOLDER,
                    TapAsk.SPINDLE,
                    BAR,
                    FEED,
                    HELD,
                    SQUARE,
                    RUN_OUT,
                    HEIGHTS,
                    ThreadAsk.UNITS))
            .called("cut");

    /** The card's form, in which the work material can't be left out. */
    private static Form withMaterialNeeded(Form card) {
        List<Field<?>> fields = new ArrayList<>(card.fields());
        fields.replaceAll(field -> field.path().equals(CUTS.path()) ? CUTS : field);
        return new Form(card.name(), fields);
    }

    private static <E extends Enum<E>> String code(E one) {
        return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public String noun() {
        return "cut";
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
                .then(entries -> TapCard.tap(entries)
                        .then(tap -> forecast(tap, entries)
                                .map(worked -> CutDocument.of(
                                        tap,
                                        worked,
                                        entries.get(ThreadAsk.UNITS)
                                                .orElse(tap.thread().family().system())))));
    }

    /** The engine's forecast with its working, for paper. */
    public Answer<Worked<CutForecast>> forecast(Map<String, String> typed) {
        return FORM.judge(typed, GrindAsk.bare(typed))
                .then(entries -> TapCard.tap(entries).then(tap -> forecast(tap, entries)));
    }

    /** The tap of what was typed, judged, for drawings. */
    public Answer<Tap> tap(Map<String, String> typed) {
        return FORM.judge(typed, GrindAsk.bare(typed)).then(TapCard::tap);
    }

    private static Answer<Worked<CutForecast>> forecast(Tap tap, Entries entries) {
        boolean blind = entries.get(HoleAsk.BLIND).orElse(false);
        boolean through = entries.get(HoleAsk.THROUGH).orElse(false);
        if (blind && through) {
            return Answer.refused(
                    new Finding("blind", "blind and through", "cannot both be", "say which of the two the hole is"));
        }
        try {
            return CutForecast.of(tap, wish(entries, opening(blind, through)));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static CutWish wish(Entries entries, @Nullable Opening opening) {
        Driven driven = new Driven(
                entries.get(DRIVE).orElse(null),
                entries.get(HOLDER).orElse(null),
                entries.get(TapAsk.SPINDLE).orElse(null),
                entries.get(BAR).orElse(null),
                entries.get(FEED).orElse(null));
        Holding holding = new Holding(
                entries.get(HELD).orElse(Grip.SQUARE),
                entries.get(SQUARE).or(() -> entries.get(TapFields.SQUARE)).orElse(null));
        Evenness evenness = new Evenness(
                entries.get(RUN_OUT).orElse(Length.ZERO), entries.get(HEIGHTS).orElse(List.of()));
        return new CutWish(
                entries.need(CUTS),
                entries.need(HOLE),
                entries.need(DEPTH),
                entries.get(WEAR).orElse(null),
                new How(entries.get(FLUID).orElse(null), opening, driven, holding, evenness));
    }

    private static @Nullable Opening opening(boolean blind, boolean through) {
        if (blind) {
            return Opening.BLIND;
        }
        return through ? Opening.THROUGH : null;
    }
}
