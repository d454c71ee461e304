// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import landfall.cards.card.FixtureCard;
import landfall.cards.card.TapCard;
import landfall.cards.card.TapFields;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.fault.Answer;
import landfall.history.ItemKind;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.thread.CallOut;

/**
 * The card of each kind of thing. A tap in a drawer may be known by its thread alone: what the crib does not ask for,
 * the questions do when they need it.
 */
public final class ItemForms {
    public static final Kind<ItemKind> KIND = CribKinds.words(ItemKind.values(), ItemKind::word);

    private static final Field<String> NAME =
            Field.optional("name", Kinds.TEXT, "black box").worded("item.name");
    private static final Field<Length> DIAMETER =
            Field.needed("diameter", Quantities.diameter(0.05, 300), "#7").worded("item.diameter");
    private static final Field<CallOut> THREAD =
            Field.optional("thread", TapFields.THREAD.kind(), "M8x1.25-6H").worded("item.thread");
    private static final Field<String> GAUGE =
            Field.needed("gauge", Kinds.TEXT, "GO plug").worded("item.gauge");

    private static final Map<ItemKind, Form> FORMS = new EnumMap<>(Map.of(
            ItemKind.TAP, TapCard.FORM.easedOf("flutes."),
            ItemKind.FIXTURE, FixtureCard.FORM,
            ItemKind.WHEEL,
                    Form.of(
                            "wheel-card",
                            NAME,
                            fixture("wheel.diameter"),
                            fixture("wheel.marking"),
                            fixture("wheel.markedSpeed")),
            ItemKind.DRILL, Form.of("drill-card", NAME, DIAMETER),
            ItemKind.GAUGE, Form.of("gauge-card", NAME, GAUGE, THREAD)));

    /** What is asked first of a tap: its thread, and its mark where it has one already. */
    public static final Form FIRST = new Form(
            "crib",
            List.of(TapFields.THREAD, Field.optional("mark", Kinds.TEXT, "T-17").worded("crib.mark")));

    private ItemForms() {}

    public static Form of(ItemKind kind) {
        return Objects.requireNonNull(FORMS.get(kind));
    }

    private static Field<?> fixture(String path) {
        return FixtureCard.FORM.field(path).orElseThrow();
    }

    /** The card as it is kept, each bare figure with its unit; every bad field is found at once. */
    public static Answer<Map<String, String>> lasting(ItemKind kind, Map<String, String> typed) {
        UnitSystem bare = bare(typed);
        Form form = of(kind);
        return form.judge(typed, bare).map(good -> Lasting.of(form, typed, bare));
    }

    /** What bare figures about a thing are in: the system of its thread, metric where it has none. */
    public static UnitSystem bare(Map<String, String> card) {
        return thread(card).map(callOut -> callOut.thread().family().system()).orElse(UnitSystem.METRIC);
    }

    /** The call-out of a card, where it has one that can be read. */
    public static Optional<CallOut> thread(Map<String, String> card) {
        String text = card.getOrDefault("thread", "");
        if (text.isBlank()) {
            return Optional.empty();
        }
        Answer<Entries> judged = Form.of("thread", THREAD).judge(Map.of("thread", text), UnitSystem.METRIC);
        return judged instanceof Answer.Of<Entries> of ? of.value().get(THREAD) : Optional.empty();
    }
}
