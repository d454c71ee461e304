// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import landfall.cards.crib.FlatJson;
import landfall.cards.crib.Told;
import landfall.history.Event;
import landfall.history.EventKind;
import landfall.history.Mark;
import org.jdbi.v3.core.Handle;

/** Events as rows. */
final class EventRows {
    static final String INSERT = "insert into event (mark, seq, at, kind, by_whom, fields, ticket)"
            + " values (:mark, :seq, :at, :kind, :by, :fields, :ticket)";

    private EventRows() {}

    static void add(Handle handle, Saying saying, long seq) {
        String ticket = saying.ticket() == null ? "seq " + seq : saying.ticket();
        handle.createUpdate(INSERT)
                .bind("mark", saying.mark().text())
                .bind("seq", seq)
                .bind("at", saying.who().at().toEpochMilli())
                .bind("kind", saying.told().what().kind().word())
                .bind("by", saying.who().by())
                .bind("fields", FlatJson.write(saying.told().fields()))
                .bind("ticket", ticket)
                .execute();
    }

    static boolean isThere(Handle handle, Mark mark, String ticket) {
        return handle.createQuery("select count(*) from event where mark = :mark and ticket = :ticket")
                        .bind("mark", mark.text())
                        .bind("ticket", ticket)
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }

    static List<KeptEvent> of(Handle handle, Mark mark) {
        return handle.createQuery("select seq, at, kind, by_whom, fields from event where mark = :mark order by seq")
                .bind("mark", mark.text())
                .map((rows, context) -> event(rows))
                .list();
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
