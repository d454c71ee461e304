// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cards.card.TapCard;
import landfall.cards.card.TapFields;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Quantities;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.grind.Holding;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.regrind.Choice;
import landfall.regrind.Circumstances;
import landfall.regrind.Damage;
import landfall.regrind.Decision;
import landfall.regrind.FaceGrind;
import landfall.regrind.NewChamfer;
import landfall.tap.Tap;
import landfall.tap.Wear;
import landfall.working.Recorded;
import landfall.working.Step;
import landfall.working.Worked;

/** {@code decide}: grind the chamfer, the faces, cut off and chamfer anew, or scrap. */
public final class DecideAsk implements Question {
    private static final Field<Length> FLANK = Field.optional("flank", Quantities.length(0, 20), "0.2 mm");
    private static final Field<Length> TORN = Field.optional("torn", Quantities.length(0, 500), "3 mm");
    private static final Field<Length> NOSE = Field.optional("nose", Quantities.length(0, 500), "2 mm");
    private static final Field<Double> THREADS =
            Field.optional("new-chamfer-threads", Quantities.threads(1, 20), "1.5");
    private static final Field<Price> PRICE = Field.optional("price", Price.KIND, "24.50 EUR");
    private static final Form FORM = TapCard.FORM
            .and(Form.of(
                    "decide",
                    GrindAsk.WEAR,
                    GrindAsk.CHIP,
                    FLANK,
                    TORN,
                    NOSE,
                    LifeAsk.REACH,
                    PRICE,
                    THREADS,
                    ThreadAsk.UNITS))
            .called("decide");

    @Override
    public String noun() {
        return "decide";
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
            Damage damage = new Damage(
                    entries.get(GrindAsk.WEAR).orElse(Wear.DUE),
                    entries.get(GrindAsk.CHIP).orElse(null),
                    entries.get(FLANK).orElse(null),
                    entries.get(TORN).orElse(null),
                    entries.get(NOSE).orElse(null));
            Circumstances around = new Circumstances(
                    entries.get(TapFields.CUTS).orElse(null),
                    entries.get(LifeAsk.REACH).orElse(null),
                    entries.get(PRICE).map(Price::amount).orElse(null));
            Answer<Worked<Decision>> decision = Decision.of(tap, damage, around);
            return decision.map(worked -> document(tap, worked, entries));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static Document document(Tap tap, Worked<Decision> worked, Entries entries) {
        Decision decision = worked.value();
        Recorded beside = new Recorded();
        Optional<FaceGrind> face = face(tap, decision, beside);
        Optional<NewChamfer> shorter = entries.get(THREADS).map(threads -> NewChamfer.of(tap, threads, beside));
        List<Step> steps = new ArrayList<>(worked.steps());
        steps.addAll(beside.steps());
        Behind behind = new Behind(steps);
        List<Item> items = chosen(tap, decision, entries);
        items.add(new Item.Rows(
                "ways",
                decision.all().stream().map(choice -> row(choice, behind)).toList()));
        face.ifPresent(grind -> items.add(face(grind, behind)));
        shorter.ifPresent(chamfer -> items.add(Item.Group.of(
                "newChamfer",
                behind.figure("angle", chamfer.angle(), "κ_b"),
                behind.figure("cut", chamfer.cut(), "s_b"),
                behind.figure("chipRatio", chamfer.chipRatio(), Unit.PURE, "h_b"))));
        List<Caution> cautions = new ArrayList<>();
        if (!entries.has(GrindAsk.WEAR)) {
            cautions.add(LifeAsk.WEAR_ASSUMED);
        }
        cautions.addAll(decision.cautions());
        return new Document(
                "decide",
                tap.callOut().normal(),
                entries.get(ThreadAsk.UNITS).orElse(tap.thread().family().system()),
                items,
                steps,
                cautions);
    }

    /** The way that was chosen, and how the tap is held for it. */
    private static List<Item> chosen(Tap tap, Decision decision, Entries entries) {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("callout", tap.callOut().normal()));
        items.add(new Item.Text("way", decision.chosen().way().code()));
        items.add(new Item.Text("why", decision.chosen().why()));
        entries.get(PRICE)
                .filter(price -> !price.currency().isEmpty())
                .ifPresent(price -> items.add(new Item.Text("currency", price.currency())));
        Holding holding = Holding.of(tap);
        items.add(Item.Group.of(
                "hold",
                new Item.Text("way", holding.way().name().toLowerCase(Locale.ROOT)),
                new Item.Text("why", holding.words())));
        return items;
    }

    /** How the face is ground, where that way is open and the rake is known. */
    private static Optional<FaceGrind> face(Tap tap, Decision decision, Recorded pen) {
        if (tap.flutes().form().rake() == null) {
            return Optional.empty();
        }
        return decision.all().stream()
                .filter(choice -> choice.isOpen() && choice.land() != null)
                .findFirst()
                .map(choice -> {
                    Angle take = choice.land();
                    return FaceGrind.of(tap, take == null ? Angle.ZERO : take, pen);
                });
    }

    private static Item.Group row(Choice choice, Behind behind) {
        List<Item> row = new ArrayList<>();
        row.add(new Item.Text("way", choice.way().code()));
        row.add(new Item.Flag("open", choice.isOpen()));
        if (choice.thread() != null) {
            row.add(behind.figure("thread", choice.thread(), "s_all", "s_off"));
        }
        if (choice.land() != null) {
            row.add(behind.figure("land", choice.land(), "d_f"));
        }
        String way = choice.way().code().replace("-", "");
        if (choice.share() != null) {
            row.add(behind.figure("share", 100 * choice.share(), Unit.SHARE, "q_" + way));
        }
        Double money = choice.cost().money();
        if (money != null) {
            row.add(behind.figure("cost", money, Unit.MONEY, "m_" + way, "p_tap"));
        }
        String barred = choice.barred();
        row.add(new Item.Text("reason", barred == null ? choice.why() : barred));
        return new Item.Group("way", row);
    }

    private static Item face(FaceGrind grind, Behind behind) {
        return Item.Group.of(
                "face",
                behind.figure("offset", grind.offset(), "x_f"),
                behind.figure("turned", grind.turned(), "d_f"),
                behind.figure("index", grind.index(), "θ_N"),
                behind.figure("straightFeed", grind.straight().feed(), "t_f"),
                behind.figure("rakeAfterStraight", grind.straight().rake(), "γ_s"),
                behind.figure("landLeft", grind.landLeft(), "θ_f"));
    }
}
