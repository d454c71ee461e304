// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.cards.crib.FlatJson;
import landfall.cards.crib.Stock;
import landfall.cards.crib.Told;
import landfall.history.EventKind;
import landfall.history.Happening;
import landfall.history.ItemKind;
import landfall.history.Price;
import landfall.store.Store;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jspecify.annotations.Nullable;

/**
 * How taps stand on their shelves and what was paid for them, from the columns that are folded; no history is read.
 * What the events alone tell (prices, the first moment) is kept, and read again for the sizes to which something
 * happened.
 */
public final class ShelfRecords {
    /** Sizes to which something happened from which all events are read at once, which is quicker then. */
    private static final int MANY = 4;

    private static final String BOUGHT = "select item.size, event.at, event.fields from event join item on"
            + " item.mark = event.mark where item.kind = 'tap' and event.kind = 'bought'";

    private final Store store;
    private final Map<Shelf, Long> stamps = new HashMap<>();
    private final Map<String, Price> prices = new HashMap<>();
    private @Nullable Instant first;

    /** Things of one kind and size. */
    private record Shelf(String kind, String size) {}

    private record Counted(Shelf shelf, int kept, int gone, long stamp) {}

    public ShelfRecords(Store store) {
        this.store = store;
    }

    /** Taps by size, with the last price of each; the price of a size that was never bought is not known. */
    public synchronized List<Stock.Shelved> shelves() {
        return refreshed().stream()
                .filter(counted -> counted.shelf.kind.equals(ItemKind.TAP.word()))
                .map(counted -> new Stock.Shelved(
                        counted.shelf.size, counted.kept, counted.gone, prices.get(counted.shelf.size)))
                .toList();
    }

    /** The last price that was paid for a tap of a size. */
    public synchronized Optional<Price> price(String size) {
        refreshed();
        return Optional.ofNullable(prices.get(size));
    }

    /** When the first thing happened; empty where nothing has. */
    public synchronized Optional<Instant> first() {
        refreshed();
        return Optional.ofNullable(first);
    }

    private List<Counted> refreshed() {
        return store.read(handle -> {
            List<Counted> all = counted(handle);
            List<Shelf> stale = all.stream()
                    .filter(counted -> !Long.valueOf(counted.stamp).equals(stamps.get(counted.shelf)))
                    .map(Counted::shelf)
                    .toList();
            if (stale.size() > MANY) {
                first(handle.createQuery("select min(at) as at from event"));
                prices(handle.createQuery(BOUGHT));
            } else {
                stale.forEach(shelf -> refresh(handle, shelf));
            }
            all.forEach(counted -> stamps.put(counted.shelf, counted.stamp));
            return all;
        });
    }

    private static List<Counted> counted(Handle handle) {
        return handle.createQuery(
                        "select kind, size, sum(case when status in ('broken', 'scrapped') then 0 else 1 end) as kept,"
                                + " sum(case when status in ('broken', 'scrapped') then 1 else 0 end) as gone,"
                                + " sum(last_seq) as stamp from item group by kind, size order by kind, size")
                .map((rows, context) -> new Counted(
                        new Shelf(rows.getString("kind"), rows.getString("size")),
                        rows.getInt("kept"),
                        rows.getInt("gone"),
                        rows.getLong("stamp")))
                .list();
    }

    private void refresh(Handle handle, Shelf shelf) {
        first(handle.createQuery("select min(event.at) as at from item join event on event.mark = item.mark"
                        + " where item.kind = :kind and item.size = :size")
                .bind("kind", shelf.kind)
                .bind("size", shelf.size));
        if (shelf.kind.equals(ItemKind.TAP.word())) {
            prices(handle.createQuery(BOUGHT + " and item.size = :size").bind("size", shelf.size));
        }
    }

    /** Events stay, so that the first moment can only become an earlier one. */
    private void first(Query query) {
        query.map((rows, context) -> {
                    long at = rows.getLong("at");
                    return rows.wasNull() ? Optional.<Instant>empty() : Optional.of(Instant.ofEpochMilli(at));
                })
                .one()
                .filter(at -> first == null || at.isBefore(first))
                .ifPresent(at -> first = at);
    }

    private record Paid(String size, long at, Price price) {}

    private void prices(Query query) {
        Map<String, Paid> last = new HashMap<>();
        query.map((rows, context) -> paid(rows))
                .useStream(all -> all.flatMap(Optional::stream)
                        .forEach(paid -> last.merge(paid.size, paid, (one, other) -> other.at > one.at ? other : one)));
        last.forEach((size, paid) -> prices.put(size, paid.price));
    }

    private static Optional<Paid> paid(ResultSet rows) throws SQLException {
        Happening what = Told.kept(EventKind.BOUGHT, FlatJson.read(rows.getString("fields")));
        return what instanceof Happening.Bought bought && bought.price() != null
                ? Optional.of(new Paid(rows.getString("size"), rows.getLong("at"), bought.price()))
                : Optional.empty();
    }
}
