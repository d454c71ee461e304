// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import landfall.cards.crib.ShopLaws;
import landfall.cards.words.Words;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.history.Standing;
import landfall.history.Status;
import landfall.quantity.Band;
import landfall.store.crib.Glance;
import landfall.store.crib.HandSet;
import landfall.store.crib.Item;
import landfall.store.crib.KeptEvent;
import org.jspecify.annotations.Nullable;

/** One thing as its page shows it. */
public record ThingView(Glance kept, ZoneId zone, More more) {
    /**
     * What stands beside the records of the thing.
     *
     * @param set that it belongs to; empty for none
     * @param due when it is due for sharpening; empty where nobody can tell
     * @param done the event that was written down just now; null when the page was opened otherwise
     */
    public record More(
            List<Item> fixtures,
            Optional<HandSet> set,
            Optional<ShopLaws.Found> due,
            @Nullable EventKind done) {
        public More {
            fixtures = List.copyOf(fixtures);
        }
    }

    /** When it is due, in words; empty where nobody can tell. */
    public String due() {
        return more.due()
                .map(found -> {
                    Band left = found.due().value().left();
                    return Words.of(
                            "page.crib.due." + found.when().name().toLowerCase(Locale.ROOT),
                            Math.round(left.low()),
                            Math.round(left.high()));
                })
                .orElse("");
    }

    /** What was written down just now. */
    public String done() {
        EventKind done = more.done();
        return done == null ? "" : Words.of("page.crib.done", done.word());
    }

    /** What comes after what was written down just now. */
    public List<Onward> next() {
        if (more.done() == EventKind.SHARPENED && isTap()) {
            return List.of(
                    onward().stream()
                            .filter(link -> link.address().startsWith("/grind/inspect"))
                            .findFirst()
                            .orElseThrow(),
                    log("page.crib.nextInspected", EventKind.INSPECTED));
        }
        if (more.done() == EventKind.MEASURED && isTap()) {
            return onward().stream()
                    .filter(link -> link.address().startsWith("/grind?"))
                    .toList();
        }
        return List.of();
    }

    /** Whether nobody told yet how its life here began, so that holes are counted from nowhere. */
    public boolean hasNoStart() {
        return isTap() && lastSeq() == 0;
    }

    private Onward log(String words, EventKind kind) {
        return new Onward(Words.of(words), "/crib/" + mark() + "?event=" + kind.word());
    }

    /** @param takenBack whether a later correction took it back */
    public record Line(long seq, String at, String by, String kind, String fields, boolean takenBack) {}

    public record Onward(String words, String address) {}

    public String mark() {
        return kept.item().mark().text();
    }

    public String what() {
        return (kept.item().kind().word() + " " + kept.item().words()).strip();
    }

    public String state() {
        Standing standing = kept.standing();
        return standing.place().isEmpty()
                ? standing.status().word()
                : standing.status().word() + ", " + standing.place();
    }

    public String uses() {
        var uses = kept.standing().uses();
        String since = (uses.about() ? Words.of("crib.about") + " " : "") + uses.sinceSharp();
        return Words.of("crib.uses", uses.holes(), since, uses.sharpenings());
    }

    /** The taps of its hand set and how each stands; none where it belongs to none. */
    public List<Member> members() {
        return more.set().map(HandSet::members).orElse(List.of()).stream()
                .map(row -> new Member(
                        row.item().mark().text(),
                        row.place().isEmpty()
                                ? row.status().word()
                                : row.status().word() + ", " + row.place(),
                        row.status().ended() || row.status() == Status.LENT))
                .toList();
    }

    /** @param missing whether it is lent or gone */
    public record Member(String mark, String state, boolean missing) {}

    public String setWords() {
        return more.set().map(CribText::set).orElse("");
    }

    public boolean isTap() {
        return kept.item().kind() == ItemKind.TAP;
    }

    public long lastSeq() {
        return kept.standing().last().seq();
    }

    public Map<String, String> card() {
        return kept.item().card();
    }

    /** The newest first. */
    public List<Line> events() {
        DateTimeFormatter form = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm").withZone(zone);
        List<Line> lines = new ArrayList<>();
        for (KeptEvent event : kept.events()) {
            lines.add(new Line(
                    event.event().seq(),
                    form.format(event.event().at()),
                    event.event().by(),
                    event.event().kind().word(),
                    event.fields().entrySet().stream()
                            .map(field -> field.getKey() + " " + field.getValue())
                            .collect(Collectors.joining(", ")),
                    kept.isTakenBack(event)));
        }
        Collections.reverse(lines);
        return lines;
    }

    /** Where the events before these are shown; empty where there are none. */
    public String earlier() {
        return kept.earlier() == 0 ? "" : "/crib/" + mark() + "?before=" + kept.firstSeq() + "#story";
    }

    /** What can happen to it, in the order of a tap's life; corrections are made beside the event. */
    public List<EventKind> kinds() {
        List<EventKind> kinds = new ArrayList<>();
        for (EventKind kind : EventKind.values()) {
            if (kept.item().kind().knows(kind) && kind != EventKind.CORRECTED) {
                kinds.add(kind);
            }
        }
        return kinds;
    }

    /** Where the tap's card can be carried on to. */
    public List<Onward> onward() {
        if (!isTap()) {
            return List.of();
        }
        return new ThingLinks(kept, more.fixtures()).all();
    }
}
