// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.app.given.OpenedFor;
import landfall.app.shell.Typed;
import landfall.cards.card.FixtureCard;
import landfall.cards.card.TapCard;
import landfall.cards.form.Form;
import landfall.cards.words.Words;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.store.crib.Glance;
import landfall.store.crib.Item;
import landfall.store.crib.KeptEvent;

/** Where a tap's card is carried on to: with the wear that was measured last, and a fixture whose cam fits it. */
final class ThingLinks {
    private static final int MOST_FIXTURES = 3;

    private final Glance kept;
    private final List<Item> fixtures;

    ThingLinks(Glance kept, List<Item> fixtures) {
        this.kept = kept;
        this.fixtures = fixtures;
    }

    List<ThingView.Onward> all() {
        Map<String, String> card = fields(TapCard.FORM, kept.item());
        Map<String, String> worn = new LinkedHashMap<>(card);
        String wear = wearLand();
        if (!wear.isEmpty()) {
            worn.put("wear", wear);
        }
        Map<String, String> thread = Map.of("thread", card.getOrDefault("thread", ""));
        List<ThingView.Onward> all = new ArrayList<>();
        all.add(new ThingView.Onward(Words.of("page.crib.toThread"), Typed.address("/thread", thread)));
        all.add(new ThingView.Onward(Words.of("page.crib.toHole"), Typed.address("/hole", thread)));
        all.addAll(settings(worn));
        all.add(new ThingView.Onward(Words.of("page.crib.toInspect"), opened("/grind/inspect", card)));
        all.add(new ThingView.Onward(Words.of("page.crib.toLife"), opened("/grind/life", worn)));
        return all;
    }

    /** One for each fixture with as many lobes as the tap has flutes; where none is known, the tap alone. */
    private List<ThingView.Onward> settings(Map<String, String> worn) {
        List<ThingView.Onward> settings = new ArrayList<>();
        String flutes = worn.getOrDefault("flutes.count", "");
        for (Item fixture : fixtures) {
            if (settings.size() < MOST_FIXTURES
                    && !flutes.isEmpty()
                    && flutes.equals(fixture.card().get("cam.lobes"))) {
                Map<String, String> both = new LinkedHashMap<>(worn);
                fields(FixtureCard.FORM, fixture).forEach(both::putIfAbsent);
                settings.add(
                        new ThingView.Onward(Words.of("page.crib.toGrindOn", fixture.mark()), opened("/grind", both)));
            }
        }
        return settings.isEmpty()
                ? List.of(new ThingView.Onward(Words.of("page.crib.toGrind"), opened("/grind", worn)))
                : settings;
    }

    /** What the pages of the questions are told of a tap; nothing of other things. */
    static Map<String, String> subject(Glance kept) {
        if (kept.item().kind() != ItemKind.TAP) {
            return Map.of();
        }
        Map<String, String> subject = fields(TapCard.FORM, kept.item());
        subject.put(OpenedFor.FIELD, kept.item().mark().text());
        return subject;
    }

    private String opened(String path, Map<String, String> fields) {
        Map<String, String> all = new LinkedHashMap<>(fields);
        all.put(OpenedFor.FIELD, kept.item().mark().text());
        return Typed.address(path, all);
    }

    private static Map<String, String> fields(Form form, Item item) {
        Map<String, String> fields = new LinkedHashMap<>();
        item.card().forEach((path, text) -> {
            if (form.field(path).isPresent() && !path.equals("mark")) {
                fields.put(path, text);
            }
        });
        return fields;
    }

    /** The wear land as it was measured last since the tap was sharp; empty where nobody measured it. */
    private String wearLand() {
        String wear = "";
        for (KeptEvent event : kept.events()) {
            EventKind kind = event.event().kind();
            if (kind == EventKind.SHARPENED && !kept.isTakenBack(event)) {
                wear = "";
            } else if (kind == EventKind.MEASURED && !kept.isTakenBack(event)) {
                wear = event.fields().getOrDefault("wear-land", wear);
            }
        }
        return wear;
    }
}
