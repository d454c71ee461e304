// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import landfall.cards.crib.FlatJson;
import landfall.cards.crib.Told;
import landfall.history.Event;
import landfall.history.EventKind;
import landfall.history.Happening;
import landfall.history.History;
import landfall.history.Mark;
import org.jdbi.v3.core.Handle;

/** Events as rows. */
final class EventRows {
    static final String INSERT =
            "insert into event (mark, seq, at, kind, by_whom, fields, ticket) values (?, ?, ?, ?, ?, ?, ?)";

    private static final String SELECT = "select seq, at, kind, by_whom, fields from event where mark = :mark";

    private EventRows() {}

    static Object[] values(Saying saying, long seq) {
        return new Object[] {
            saying.mark().text(),
            seq,
            saying.who().at().toEpochMilli(),
            saying.told().what().kind().word(),
            saying.who().by(),
            FlatJson.write(saying.told().fields()),
            saying.ticket() == null ? "seq " + seq : saying.ticket()
        };
    }

    static Optional<KeptEvent> ofTicket(Handle handle, Mark mark, String ticket) {
        return handle.createQuery(SELECT + " and ticket = :ticket")
                .bind("mark", mark.text())
                .bind("ticket", ticket)
                .map((rows, context) -> event(rows))
                .findOne();
    }

    static List<KeptEvent> of(Handle handle, Mark mark) {
        return handle.createQuery(SELECT + " order by seq")
                .bind("mark", mark.text())
                .map((rows, context) -> event(rows))
                .list();
    }

    static History history(Handle handle, Mark mark) {
        return History.of(of(handle, mark).stream().map(KeptEvent::event).toList());
    }

    static List<KeptEvent> since(Handle handle, Mark mark, long after) {
        return handle.createQuery(SELECT + " and seq > :after order by seq")
                .bind("mark", mark.text())
                .bind("after", after)
                .map((rows, context) -> event(rows))
                .list();
    }

    /** The last ones whose number is less than that, in the order of numbers. */
    static List<KeptEvent> before(Handle handle, Mark mark, Window window) {
        List<KeptEvent> events = handle.createQuery(SELECT + " and seq < :before order by seq desc limit :most")
                .bind("mark", mark.text())
                .bind("before", window.before())
                .bind("most", window.most())
                .map((rows, context) -> event(rows))
                .list();
        Collections.reverse(events);
        return events;
    }

    static long countBefore(Handle handle, Mark mark, long seq) {
        return handle.createQuery("select count(*) from event where mark = :mark and seq < :seq")
                .bind("mark", mark.text())
                .bind("seq", seq)
                .mapTo(Long.class)
                .one();
    }

    /** Numbers of the events that were taken back, told by the corrections alone, the last one first. */
    static Set<Long> takenBack(Handle handle, Mark mark) {
        Set<Long> gone = new TreeSet<>();
        handle.createQuery(SELECT + " and kind = 'corrected' order by seq desc")
                .bind("mark", mark.text())
                .map((rows, context) -> event(rows).event())
                .forEach(event -> {
                    if (!gone.contains(event.seq()) && event.what() instanceof Happening.Corrected corrected) {
                        gone.add(corrected.takesBack());
                    }
                });
        return gone;
    }

    private static KeptEvent event(ResultSet rows) throws SQLException {
        EventKind kind = EventKind.valueOf(rows.getString("kind").toUpperCase(Locale.ROOT));
        Map<String, String> fields = FlatJson.read(rows.getString("fields"));
        return new KeptEvent(
                new Event(
                        rows.getLong("seq"),
                        Instant.ofEpochMilli(rows.getLong("at")),
                        rows.getString("by_whom"),
                        Told.kept(kind, fields)),
                fields);
    }
}
