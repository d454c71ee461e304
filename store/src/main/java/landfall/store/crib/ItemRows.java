// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import landfall.cards.crib.FlatJson;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.history.Status;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.SqlStatement;

/** Things as rows. */
final class ItemRows {
    private static final String COLUMNS = "mark, kind, size, hand_set, card, status, place, holes, since_sharp,"
            + " sharpenings, calibration_due, last_seq, last_at";

    private static final int FETCH = 500;

    private ItemRows() {}

    static boolean addIfFree(Handle handle, Row row) {
        return bound(
                                handle.createUpdate(
                                        "insert into item (" + COLUMNS + ") values (:mark, :kind, :size, :handSet,"
                                                + " :card, :status, :place, :holes, :sinceSharp,"
                                                + " :sharpenings, :calibrationDue,"
                                                + " :lastSeq, :lastAt) on conflict (mark) do nothing"),
                                row)
                        .execute()
                == 1;
    }

    static boolean recard(Handle handle, Item item) {
        return handle.createUpdate("update item set card = :card, size = :size, hand_set = :handSet where mark = :mark")
                        .bind("card", FlatJson.write(item.card()))
                        .bind("size", item.size())
                        .bind("handSet", item.handSet())
                        .bind("mark", item.mark().text())
                        .execute()
                == 1;
    }

    /** Writes the folded columns when the last event is still the one that they were folded after. */
    static boolean fold(Handle handle, Row row, long lastSeq) {
        return bound(
                                handle.createUpdate("update item set status = :status, place = :place, holes = :holes,"
                                        + " since_sharp = :sinceSharp, sharpenings = :sharpenings,"
                                        + " calibration_due = :calibrationDue, last_seq = :lastSeq, last_at = :lastAt"
                                        + " where mark = :mark and last_seq = :before"),
                                row)
                        .bind("before", lastSeq)
                        .execute()
                == 1;
    }

    /**
     * Holds a thing for the rest of the transaction, so that its next number is nobody else's: an update that changes
     * nothing takes the row in either database. SQLite has given the whole file to this writer already.
     */
    static void hold(Handle handle, Mark mark) {
        handle.createUpdate("update item set last_seq = last_seq where mark = :mark")
                .bind("mark", mark.text())
                .execute();
    }

    static Optional<Row> find(Handle handle, Mark mark) {
        return handle.createQuery("select " + COLUMNS + " from item where mark = :mark")
                .bind("mark", mark.text())
                .map((rows, context) -> row(rows))
                .findOne();
    }

    static List<Row> list(Handle handle, Wanted wanted) {
        StringBuilder sql = new StringBuilder("select ").append(COLUMNS).append(" from item where 1 = 1");
        if (wanted.kind() != null) {
            sql.append(" and kind = :kind");
        }
        if (wanted.size() != null) {
            sql.append(" and size = :size");
        }
        if (!wanted.ended()) {
            sql.append(" and status not in ('broken', 'scrapped')");
        }
        Query query = handle.createQuery(sql.append(" order by kind, size, mark limit :most"))
                .bind("most", wanted.most());
        if (wanted.kind() != null) {
            query.bind("kind", wanted.kind().word());
        }
        if (wanted.size() != null) {
            query.bind("size", wanted.size());
        }
        return query.map((rows, context) -> row(rows)).list();
    }

    static void each(Handle handle, Consumer<Row> each) {
        handle.createQuery("select " + COLUMNS + " from item order by mark")
                .setFetchSize(FETCH)
                .map((rows, context) -> row(rows))
                .useStream(all -> all.forEach(each));
    }

    private static <S extends SqlStatement<S>> S bound(S statement, Row row) {
        Item item = row.item();
        Instant at = row.seen().lastAt();
        LocalDate due = row.seen().calibrationDue();
        return statement
                .bind("mark", item.mark().text())
                .bind("kind", item.kind().word())
                .bind("size", item.size())
                .bind("handSet", item.handSet())
                .bind("card", FlatJson.write(item.card()))
                .bind("status", row.status().name().toLowerCase(Locale.ROOT))
                .bind("place", row.place())
                .bind("holes", row.counts().holes())
                .bind("sinceSharp", row.counts().sinceSharp())
                .bind("sharpenings", row.counts().sharpenings())
                .bind("calibrationDue", due == null ? "" : due.toString())
                .bind("lastSeq", row.seen().lastSeq())
                .bind("lastAt", at == null ? -1 : at.toEpochMilli());
    }

    private static Row row(ResultSet rows) throws SQLException {
        Item item = new Item(
                new Mark(rows.getString("mark")),
                ItemKind.valueOf(rows.getString("kind").toUpperCase(Locale.ROOT)),
                rows.getString("hand_set"),
                FlatJson.read(rows.getString("card")));
        String due = rows.getString("calibration_due");
        long at = rows.getLong("last_at");
        return new Row(
                item,
                Status.valueOf(rows.getString("status").toUpperCase(Locale.ROOT)),
                rows.getString("place"),
                new Row.Counts(rows.getLong("holes"), rows.getLong("since_sharp"), rows.getLong("sharpenings")),
                new Row.Seen(
                        rows.getLong("last_seq"),
                        at < 0 ? null : Instant.ofEpochMilli(at),
                        due.isEmpty() ? null : LocalDate.parse(due)));
    }
}
