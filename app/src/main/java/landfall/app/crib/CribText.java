// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import landfall.cards.words.Words;
import landfall.history.Event;
import landfall.history.Standing;
import landfall.store.crib.Glance;
import landfall.store.crib.HandSet;
import landfall.store.crib.Item;
import landfall.store.crib.KeptEvent;
import landfall.store.crib.Row;
import landfall.store.table.Report;

/** The crib's answers for people. */
public final class CribText {
    private CribText() {}

    public static String kept(Glance kept, ZoneId zone) {
        Item item = kept.item();
        Standing standing = kept.standing();
        StringBuilder text = new StringBuilder();
        text.append("%s  %s  %s%n".formatted(item.mark(), item.kind().word(), item.words()));
        text.append("%s%s%n"
                .formatted(standing.status().word(), standing.place().isEmpty() ? "" : ", " + standing.place()));
        if (standing.uses().holes() > 0 || standing.uses().sharpenings() > 0) {
            text.append(Words.of(
                            "crib.uses",
                            standing.uses().holes(),
                            (standing.uses().about() ? Words.of("crib.about") + " " : "")
                                    + standing.uses().sinceSharp(),
                            standing.uses().sharpenings()))
                    .append('\n');
        }
        if (!item.handSet().isEmpty()) {
            text.append(Words.of("crib.set", item.handSet())).append('\n');
        }
        text.append('\n').append(card(item.card())).append('\n');
        if (kept.earlier() > 0) {
            text.append(Words.of("crib.earlier", kept.earlier(), kept.item().mark(), kept.firstSeq()))
                    .append('\n');
        }
        kept.events().forEach(event -> text.append(event(event, kept, zone)).append('\n'));
        return text.toString().stripTrailing();
    }

    private static String card(Map<String, String> card) {
        return card.entrySet().stream()
                .map(field -> "  %-22s %s%n".formatted(field.getKey(), field.getValue()))
                .collect(Collectors.joining());
    }

    /** One event on a line; one that was taken back says so. */
    public static String event(KeptEvent kept, Glance whole, ZoneId zone) {
        Event event = kept.event();
        String fields = kept.fields().entrySet().stream()
                .map(field -> field.getKey() + " " + field.getValue())
                .collect(Collectors.joining(", "));
        String line = String.format(
                Locale.ROOT,
                "%4d  %s  %-10s  %-10s  %s",
                event.seq(),
                DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm").withZone(zone).format(event.at()),
                event.by(),
                event.kind().word(),
                fields);
        return whole.isTakenBack(kept) ? line + "  (" + Words.of("crib.takenBack") + ")" : line;
    }

    public static String rows(List<Row> rows, List<HandSet> sets, long more) {
        if (rows.isEmpty()) {
            return Words.of("crib.empty");
        }
        StringBuilder text = new StringBuilder("%-12s %-8s %-22s %-9s %8s %6s %5s  %s%n"
                .formatted("mark", "kind", "size", "state", "holes", "since", "sharp", "place"));
        rows.forEach(row -> text.append("%-12s %-8s %-22s %-9s %8d %6d %5d  %s%n"
                .formatted(
                        row.item().mark(),
                        row.item().kind().word(),
                        row.item().size(),
                        row.status().word(),
                        row.counts().holes(),
                        row.counts().sinceSharp(),
                        row.counts().sharpenings(),
                        row.place())));
        sets.forEach(set -> text.append(set(set)).append('\n'));
        if (more > 0) {
            text.append(Words.of("crib.more", more)).append('\n');
        }
        return text.toString().stripTrailing();
    }

    /** A hand set on a line: its taps, and which of them are lent or gone. */
    static String set(HandSet set) {
        String marks =
                set.members().stream().map(row -> row.item().mark().text()).collect(Collectors.joining(", "));
        String line = Words.of("crib.setOf", set.name(), marks);
        if (set.members().size() == 1) {
            return line + " " + Words.of("crib.setAlone");
        }
        return set.missing().stream()
                .map(row -> Words.of(
                        "crib.setMissing",
                        row.item().mark().text(),
                        row.status().word() + (row.place().isEmpty() ? "" : ", " + row.place())))
                .collect(Collectors.joining(" ", line + " ", ""))
                .strip();
    }

    public static String report(Report report) {
        StringBuilder text = new StringBuilder();
        report.bad()
                .forEach(bad -> text.append(Words.of(
                                "crib.badLine", bad.line(), bad.finding().sentence()))
                        .append('\n'));
        if (report.isStopped()) {
            text.append(Words.of("crib.stopped", report.stoppedIn())).append('\n');
        }
        text.append(Words.of(
                report.isKept() ? "crib.imported" : "crib.notImported",
                report.rows(),
                report.good(),
                report.addedRows(),
                report.unchangedRows(),
                report.replacedRows(),
                report.badRows()));
        return text.toString();
    }
}
