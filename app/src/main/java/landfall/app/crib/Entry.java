// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.crib.EventForms;
import landfall.cards.crib.Moments;
import landfall.cards.crib.Told;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.EventKind;
import landfall.store.crib.Item;
import landfall.store.crib.Saying;
import org.jspecify.annotations.Nullable;

/** What the form on a thing's page says: what happened, when, by whom, and a name for the request. */
final class Entry {
    private static final List<String> ABOUT = List.of("event", "by", "at", "ticket", "after", "waited");
    private static final int LONGEST_TICKET = 64;

    private static final int LONGEST_WAIT_DAYS = 30;

    private Entry() {}

    /** The kind that the form tells; a word that is none is refused with the nearest. */
    static Answer<EventKind> kind(Map<String, String> typed) {
        return EventForms.kind(typed.getOrDefault("event", ""));
    }

    /** All of it, every bad field found at once. */
    static Answer<Saying> read(
            Item item, EventKind kind, Map<String, String> typed, Answer<String> by, ZonedDateTime now) {
        Map<String, String> fields = new LinkedHashMap<>(typed);
        ABOUT.forEach(fields::remove);
        Answer<Told> told = Told.read(kind, fields, item.bare());
        Answer<Instant> at =
                typedAt(typed, now).then(moment -> Moments.read("at", typed.getOrDefault("at", "now"), moment));
        String ticket = typed.get("ticket");
        List<Finding> findings = new ArrayList<>(told.findings());
        findings.addAll(at.findings());
        findings.addAll(by.findings());
        if (ticket != null && ticket.length() > LONGEST_TICKET) {
            findings.add(new Finding(
                    "ticket", ticket, "is longer than " + LONGEST_TICKET + " characters", "open the page anew"));
        }
        if (!findings.isEmpty()) {
            return Answer.refused(findings);
        }
        return Answer.of(new Saying(
                item.mark(), told.orThrow(), new Saying.Who(by.orThrow(), at.orThrow()), ticket, after(typed)));
    }

    /** When it was typed: before now by the seconds that it waited in a browser which could not reach the server. */
    private static Answer<ZonedDateTime> typedAt(Map<String, String> typed, ZonedDateTime now) {
        String waited = typed.getOrDefault("waited", "0");
        return waited.matches("\\d{1,7}")
                        && Duration.ofSeconds(Long.parseLong(waited)).toDays() <= LONGEST_WAIT_DAYS
                ? Answer.of(now.minusSeconds(Long.parseLong(waited)))
                : Answer.refused(new Finding(
                        "waited",
                        waited,
                        "is not how many seconds an entry waited, or over " + LONGEST_WAIT_DAYS + " days",
                        "write it down again with the day that it happened"));
    }

    /** The last event that the person had seen; a figure that is none is as if none had been told. */
    private static @Nullable Long after(Map<String, String> typed) {
        String text = typed.getOrDefault("after", "");
        return text.matches("\\d{1,12}") ? Long.valueOf(text) : null;
    }
}
