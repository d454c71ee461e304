// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import landfall.cards.crib.FlatJson;
import landfall.cards.crib.FoldedJson;
import landfall.cards.crib.GaugeDue;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.history.Standing;
import landfall.history.Status;
import landfall.history.Uses;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.Update;
import org.jspecify.annotations.Nullable;

/** Things as rows. */
final class ItemRows {
    static final String COLUMNS = "item.mark, kind, item.size, hand_set, card, status, place, holes, since_sharp,"
            + " sharpenings, calibration_due, last_seq, last_at, folded";

    static final String INSERT = "insert into item (mark, kind, size, hand_set, card, status, place, holes,"
            + " since_sharp, sharpenings, calibration_due, last_seq, last_at, folded)"
            + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

    /** When the last event is still the one that the columns were folded after. */
    static final String FOLD = "update item set status = ?, place = ?, holes = ?, since_sharp = ?, sharpenings = ?,"
            + " calibration_due = ?, last_seq = ?, last_at = ?, folded = ? where mark = ? and last_seq = ?";

    private static final int FETCH = 500;

    private ItemRows() {}

    static Object[] inserted(Row row) {
        Item item = row.item();
        Object[] folded = folded(row.standing());
        Object[] all = new Object[14];
        all[0] = item.mark().text();
        all[1] = item.kind().word();
        all[2] = item.size();
        all[3] = item.handSet();
        all[4] = FlatJson.write(item.card());
        System.arraycopy(folded, 0, all, 5, folded.length);
        return all;
    }

    static Object[] folded(Row row, long before) {
        Object[] folded = folded(row.standing());
        Object[] all = new Object[11];
        System.arraycopy(folded, 0, all, 0, folded.length);
        all[9] = row.item().mark().text();
        all[10] = before;
        return all;
    }

    private static Object[] folded(Standing standing) {
        Instant at = standing.last().at();
        LocalDate due = standing.condition().calibrationDue();
        return new Object[] {
            standing.status().name().toLowerCase(Locale.ROOT),
            standing.place(),
            standing.uses().holes(),
            standing.uses().sinceSharp(),
            (long) standing.uses().sharpenings(),
            due == null ? "" : due.toString(),
            standing.last().seq(),
            at == null ? -1L : at.toEpochMilli(),
            FoldedJson.standing(standing)
        };
    }

    static boolean addIfFree(Handle handle, Row row) {
        Update insert = handle.createUpdate(INSERT + " on conflict (mark) do nothing");
        Object[] values = inserted(row);
        for (int i = 0; i < values.length; i++) {
            insert.bind(i, values[i]);
        }
        return insert.execute() == 1;
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

    static List<Row> ofSet(Handle handle, String name) {
        return handle.createQuery("select " + COLUMNS + " from item where hand_set = :name order by mark")
                .bind("name", name)
                .map((rows, context) -> row(rows))
                .list();
    }

    static List<GaugeDue> calibrations(Handle handle, @Nullable String size, LocalDate until) {
        Query query = handle.createQuery("select " + COLUMNS + " from item where calibration_due <> ''"
                        + " and calibration_due <= :until and kind = 'gauge' and status not in ('broken', 'scrapped')"
                        + (size == null ? "" : " and size = :size") + " order by calibration_due, mark")
                .bind("until", until.toString());
        if (size != null) {
            query.bind("size", size);
        }
        return query.map((rows, context) -> row(rows))
                .map(row -> new GaugeDue(
                        row.item().mark().text(),
                        row.item().words(),
                        Objects.requireNonNull(row.seen().calibrationDue())))
                .list();
    }

    static int gaugesWithoutCalibration(Handle handle) {
        return handle.createQuery("select count(*) from item where kind = 'gauge' and calibration_due = ''"
                        + " and status not in ('broken', 'scrapped')")
                .mapTo(Integer.class)
                .one();
    }

    static long count(Handle handle, Wanted wanted) {
        return asked(handle, "select count(*) from item where 1 = 1", "", wanted)
                .mapTo(Long.class)
                .one();
    }

    static List<Row> list(Handle handle, Wanted wanted) {
        return asked(
                        handle,
                        "select " + COLUMNS + " from item where 1 = 1",
                        " order by kind, size, mark limit :most",
                        wanted)
                .bind("most", wanted.most())
                .map((rows, context) -> row(rows))
                .list();
    }

    private static Query asked(Handle handle, String select, String end, Wanted wanted) {
        StringBuilder sql = new StringBuilder(select);
        if (wanted.kind() != null) {
            sql.append(" and kind = :kind");
        }
        if (wanted.size() != null) {
            sql.append(" and size = :size");
        }
        if (!wanted.ended()) {
            sql.append(" and status not in ('broken', 'scrapped')");
        }
        Query query = handle.createQuery(sql.append(end));
        if (wanted.kind() != null) {
            query.bind("kind", wanted.kind().word());
        }
        if (wanted.size() != null) {
            query.bind("size", wanted.size());
        }
        return query;
    }

    static void each(Handle handle, Consumer<Row> each) {
        handle.createQuery("select " + COLUMNS + " from item order by mark")
                .setFetchSize(FETCH)
                .map((rows, context) -> row(rows))
                .useStream(all -> all.forEach(each));
    }

    static Row row(ResultSet rows) throws SQLException {
        Item item = new Item(
                new Mark(rows.getString("mark")),
                ItemKind.valueOf(rows.getString("kind").toUpperCase(Locale.ROOT)),
                rows.getString("hand_set"),
                FlatJson.read(rows.getString("card")));
        String day = rows.getString("calibration_due");
        String folded = rows.getString("folded");
        String rest = folded.isEmpty() ? "{}" : folded;
        long at = rows.getLong("last_at");
        Standing standing = new Standing(
                Status.valueOf(rows.getString("status").toUpperCase(Locale.ROOT)),
                rows.getString("place"),
                new Uses(
                        rows.getLong("holes"),
                        rows.getLong("since_sharp"),
                        FoldedJson.about(rest),
                        rows.getInt("sharpenings")),
                FoldedJson.condition(rest, day.isEmpty() ? null : LocalDate.parse(day)),
                new Standing.Last(rows.getLong("last_seq"), at < 0 ? null : Instant.ofEpochMilli(at)));
        return new Row(item, standing, !folded.isEmpty());
    }
}
