// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import static landfall.cards.form.Field.optional;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.cards.form.Nearest;
import landfall.cards.form.Quantities;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;

/** What a shop has and how it likes its answers: units, paper, currency, drill drawers, wheels, fixtures, gauges. */
public final class ShopCard {
    private static final List<String> DRAWERS = List.of("number", "letter", "fraction", "metric", "inch");

    public static final Field<String> NAME = optional("name", Kinds.TEXT, "Hollow Lane Toolroom");
    public static final Field<UnitSystem> UNITS = optional("units", Kinds.UNITS, "inch");
    public static final Field<String> PAPER =
            optional("paper", CardKinds.codes(new String[] {"a4", "letter"}, code -> code), "letter");
    public static final Field<String> CURRENCY = optional(
            "currency",
            new Kind<>(
                    "a currency of three letters: USD",
                    (text, bare) -> text.strip().matches("[A-Za-z]{3}")
                            ? Answer.of(text.strip().toUpperCase(Locale.ROOT))
                            : Answer.refused(new Finding(
                                    "", text, "is not a currency of three letters", "write it like USD or EUR")),
                    Kinds.ordered("type", "string", "pattern", "^[A-Za-z]{3}$")),
            "USD");
    public static final Field<Length> DIAL = optional("dial.resolution", Quantities.length(0.0001, 1), ".0005 in");
    public static final Field<List<String>> DRILLS = optional("drills", list(DRAWERS), "number, letter, fraction");
    public static final Field<List<String>> WHEELS = optional("wheels", list(List.of()), "6 in A80J6V 4000 rev/min");
    public static final Field<List<String>> FIXTURES =
            optional("fixtures", list(List.of()), "fixture-three-lobes.json");
    public static final Field<List<String>> GAUGES = optional("gauges", list(List.of()), "1/2-13 UNC-2B plug");

    public static final Form FORM = Form.of(
            "shop-card", TapFields.VERSION, NAME, UNITS, PAPER, CURRENCY, DIAL, DRILLS, WHEELS, FIXTURES, GAUGES);

    private ShopCard() {}

    public static Answer<Map<String, String>> read(String json) {
        return Flat.read(json, FORM);
    }

    /** The card, judged. */
    public static Answer<Entries> judge(Map<String, String> typed) {
        return FORM.judge(typed, UnitSystem.METRIC);
    }

    /** Words parted by commas; only those allowed, when some are named. */
    private static Kind<List<String>> list(List<String> allowed) {
        Map<String, Object> item =
                allowed.isEmpty() ? Map.of("type", "string") : Kinds.ordered("type", "string", "enum", allowed);
        String words = allowed.isEmpty() ? "a list" : "some of " + String.join(", ", allowed);
        return new Kind<>(
                words,
                (text, bare) -> {
                    List<String> read = new ArrayList<>();
                    for (String word : text.split(",")) {
                        String one = word.strip();
                        if (!allowed.isEmpty() && !allowed.contains(one.toLowerCase(Locale.ROOT))) {
                            return Answer.refused(new Finding(
                                    "",
                                    one,
                                    "must be one of " + String.join(", ", allowed),
                                    "write " + Nearest.of(one, allowed)));
                        }
                        read.add(allowed.isEmpty() ? one : one.toLowerCase(Locale.ROOT));
                    }
                    return Answer.of(read);
                },
                Kinds.ordered("type", "array", "items", item));
    }
}
