// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import static landfall.cards.form.Field.needed;
import static landfall.cards.form.Field.optional;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.fault.Answer;
import landfall.history.EventKind;
import landfall.history.Happening.Feel;
import landfall.history.Price;
import landfall.history.SharpeningWay;
import landfall.quantity.Length;
import landfall.quantity.Torque;
import landfall.quantity.UnitSystem;

/** The fields of each kind of event. */
public final class EventForms {
    /** What an event is told by; every kind is refused with the nearest. */
    public static final Kind<EventKind> KIND = CribKinds.words(EventKind.values(), EventKind::word);

    private static final Field<EventKind> EVENT = told(needed("event", KIND, "tapped"));

    /** What is asked first of an event: what it is. */
    public static final Form FIRST = Form.of("event", EVENT);

    static final Field<Price> PRICE = told(optional("price", CribKinds.PRICE, "18.50 EUR"));
    static final Field<String> SUPPLIER = told(optional("supplier", Kinds.TEXT, "catalogue 4711"));
    static final Field<String> TO = told(needed("to", Kinds.TEXT, "bench 2"));
    static final Field<String> PLACE = told(needed("place", Kinds.TEXT, "drawer 3"));
    static final Field<Integer> HOLES = told(needed("holes", Kinds.count(1, 10_000_000), "40"));
    static final Field<Boolean> ABOUT = told(optional("about", Kinds.YES_NO, "yes"));
    static final Field<String> SINCE = told(optional("since", Kinds.TEXT, "Monday"));
    static final Field<String> MATERIAL = told(optional("material", CribKinds.MATERIAL, "4140 annealed"));
    static final Field<Length> DEPTH = told(optional("depth", Quantities.length(0.1, 1000), "16 mm"));
    static final Field<Torque> TORQUE = told(optional("torque", Quantities.TORQUE, "6 N·m"));
    static final Field<Feel> FEEL = told(optional(
            "feel",
            Kinds.<Feel>choice(Kinds.ordered("fresh", Feel.FRESH, "heavier", Feel.HEAVIER, "heavy", Feel.HEAVY)),
            "heavier"));
    static final Field<Double> TURNS = told(optional("gauge-turns", Quantities.number(0, 200), "7.5"));
    static final Field<Length> WEAR = told(optional("wear-land", Quantities.length(0, 20), "0.2 mm"));
    static final Field<Length> PITCH = told(optional("pitch-diameter", Quantities.length(0.05, 300), "7.212 mm"));
    static final Field<Length> LENGTH = told(optional("thread-length", Quantities.length(0.5, 1000), "20 mm"));
    static final Field<Length> LAND = told(optional("land-width", Quantities.length(0.01, 300), "2.5 mm"));
    static final Field<SharpeningWay> WAY =
            told(needed("way", CribKinds.words(SharpeningWay.values(), CribKinds::dashed), "chamfer"));
    static final Field<Length> STOCK = told(optional("stock", Quantities.length(0, 50), "0.3 mm"));
    static final Field<String> WHEEL = told(optional("wheel", Kinds.TEXT, "W0002"));
    static final Field<Length> DIAL = told(optional("dial-found", Quantities.length(0, 20), "0.21 mm"));
    static final Field<Boolean> PASSED = told(needed("passed", Kinds.YES_NO, "yes"));
    static final Field<String> NOTE = told(optional("note", Kinds.TEXT, "tooth 2 is 0.01 high"));
    static final Field<Boolean> COATED = told(needed("coated", Kinds.YES_NO, "no"));
    static final Field<String> COATING = told(optional("coating", Kinds.TEXT, "TiN"));
    static final Field<LocalDate> DUE = told(needed("due", CribKinds.DATE, "2027-11-01"));
    static final Field<String> WHEN = told(optional("when", Kinds.TEXT, "reversal"));
    static final Field<Boolean> PART_LOST = told(optional("part-lost", Kinds.YES_NO, "no"));
    static final Field<String> BECAUSE = told(needed("because", Kinds.TEXT, "wrong tap"));
    static final Field<Integer> TAKES_BACK = told(needed("takes-back", Kinds.count(1, 999_999_999), "3"));

    private static final Map<EventKind, Form> FORMS = new EnumMap<>(EventKind.class);

    static {
        put(EventKind.BOUGHT, PRICE, SUPPLIER);
        put(EventKind.ISSUED, TO);
        put(EventKind.RETURNED, PLACE.leftOpen());
        put(EventKind.TAPPED, HOLES, ABOUT, SINCE, MATERIAL, DEPTH, TORQUE, FEEL, TURNS);
        put(EventKind.MEASURED, WEAR, PITCH, LENGTH, LAND);
        put(EventKind.SHARPENED, WAY, STOCK, WHEEL, DIAL);
        put(EventKind.INSPECTED, PASSED);
        put(EventKind.MOVED, PLACE);
        put(EventKind.LENT, TO);
        put(EventKind.COATED, COATED, COATING);
        put(EventKind.CALIBRATED, PASSED, DUE);
        put(EventKind.BROKEN, WHEN, PART_LOST);
        put(EventKind.SCRAPPED, BECAUSE.leftOpen());
        put(EventKind.CORRECTED, TAKES_BACK, BECAUSE);
    }

    private EventForms() {}

    /** The kind of event that a word names; one that is none is refused with the nearest. */
    public static Answer<EventKind> kind(String word) {
        return FIRST.judge(Map.of("event", word), UnitSystem.METRIC).map(entries -> entries.need(EVENT));
    }

    /** The fields of an event of that kind. */
    public static Form of(EventKind kind) {
        return Objects.requireNonNull(FORMS.get(kind));
    }

    private static void put(EventKind kind, Field<?>... fields) {
        List<Field<?>> all = new ArrayList<>(List.of(fields));
        all.add(NOTE);
        FORMS.put(kind, new Form(kind.word(), all));
    }

    private static <T> Field<T> told(Field<T> field) {
        return field.worded("event." + field.path());
    }
}
