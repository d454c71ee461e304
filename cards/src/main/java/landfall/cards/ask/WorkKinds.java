// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import landfall.cards.card.ShopCard;
import landfall.cards.entry.LengthEntry;
import landfall.cards.form.Entries;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.drill.Drawer;
import landfall.drill.Drill;
import landfall.drill.DrillSeries;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.material.Materials;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.tap.FluteKind;
import org.jspecify.annotations.Nullable;

/** The kinds that questions about work have: what is tapped, which drills there are, how flutes run. */
public final class WorkKinds {
    static final Kind<WorkMaterial> MATERIAL = new Kind<>(
            "a work material: 1045, C45, 6061-T6",
            (text, bare) -> Materials.find("material", text),
            Kinds.ordered("type", "string", "description", "a work material: 1045, C45, 6061-T6"));

    private static final String DRILL_WORDS =
            "drawers and drills: number, letter, fraction, metric, inch, #7, 6.8 mm, 13/64";

    /** The drills that a shop owns: whole drawers, single drills, or both. */
    public static final Kind<List<Drill>> DRILLS =
            new Kind<>(DRILL_WORDS, WorkKinds::drills, Kinds.ordered("type", "string", "description", DRILL_WORDS));

    /** A shop card as a person keeps it in a file. */
    static final Kind<Entries> SHOP = new Kind<>(
            "the text of a shop card",
            (text, bare) -> inside("shop.", ShopCard.read(text).then(ShopCard::judge)),
            Kinds.ordered("type", "string", "description", "the text of a shop card"));

    static final Kind<InsertLength> INSERT = new Kind<>(
            "a length of insert: 1.5 D, 12 mm",
            InsertLength::read,
            Kinds.ordered("type", List.of("string", "number"), "description", "a length of insert: 1.5 D, 12 mm"));

    static final Kind<FluteKind> FLUTES = Kinds.choice(flutes());

    private WorkKinds() {}

    /** One of several, by the code of each. */
    static <T> Kind<T> codes(T[] all, Function<T, String> code) {
        List<Object> pairs = new ArrayList<>();
        for (T one : all) {
            pairs.add(code.apply(one));
            pairs.add(one);
        }
        return Kinds.choice(Kinds.ordered(pairs.toArray()));
    }

    private static Map<String, FluteKind> flutes() {
        Map<String, FluteKind> kinds = new LinkedHashMap<>();
        for (FluteKind kind : FluteKind.values()) {
            kinds.put(kind.code(), kind);
        }
        return kinds;
    }

    private static Answer<List<Drill>> drills(String text, UnitSystem bare) {
        List<Drill> drills = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (String part : text.split(",")) {
            String word = part.strip();
            List<Drill> drawer = drawer(word.toLowerCase(Locale.ROOT));
            if (!drawer.isEmpty()) {
                drills.addAll(drawer);
            } else {
                Answer<Drill> single = single(word, bare);
                findings.addAll(single.findings());
                if (single instanceof Answer.Of<Drill> of) {
                    drills.add(of.value());
                }
            }
        }
        return findings.isEmpty() ? Answer.of(drills.stream().distinct().toList()) : Answer.refused(findings);
    }

    /** Findings on a card inside a field keep the place where they stand on the card. */
    private static <T> Answer<T> inside(String place, Answer<T> answer) {
        return answer instanceof Answer.Of<T>
                ? answer
                : Answer.refused(answer.findings().stream()
                        .map(found -> new Finding(place + found.field(), found.given(), found.why(), found.mend()))
                        .toList());
    }

    /** The drills in the drawers of a shop; null when its card names none. */
    static @Nullable List<Drill> drawersOf(Entries shop) {
        return shop.get(ShopCard.DRILLS)
                .map(names -> names.stream()
                        .flatMap(name -> drawer(name).stream())
                        .distinct()
                        .toList())
                .orElse(null);
    }

    private static List<Drill> drawer(String word) {
        if (word.equals("inch")) {
            return DrillSeries.all().stream()
                    .filter(drill -> drill.drawer().system() == UnitSystem.INCH)
                    .toList();
        }
        for (Drawer drawer : Drawer.values()) {
            if (drawer.word().equals(word)) {
                return DrillSeries.of(drawer);
            }
        }
        return List.of();
    }

    /** One drill by its name or diameter; a size that no drawer has keeps the text as its name. */
    private static Answer<Drill> single(String word, UnitSystem bare) {
        var named = DrillSeries.named(word);
        if (named.isPresent()) {
            return Answer.of(named.get());
        }
        Answer<Length> diameter = LengthEntry.readDiameter(word, bare);
        if (diameter instanceof Answer.Refused<Length>) {
            return Answer.refused(new Finding("", word, "is neither a drawer nor a drill", "write " + DRILL_WORDS));
        }
        Length length = diameter.orThrow();
        if (length.mm() <= 0) {
            return Answer.refused(new Finding("", word, "must be over 0", "write a drill such as 6.8 mm"));
        }
        return Answer.of(DrillSeries.all().stream()
                .filter(drill -> Math.abs(drill.diameter().mm() - length.mm()) < 1e-6)
                .findFirst()
                .orElseGet(() -> odd(word, length)));
    }

    private static Drill odd(String word, Length length) {
        boolean metric = word.endsWith("mm");
        String name = metric ? word.substring(0, word.length() - 2).strip() : word;
        return new Drill(metric ? Drawer.METRIC : Drawer.FRACTION, name, length);
    }
}
