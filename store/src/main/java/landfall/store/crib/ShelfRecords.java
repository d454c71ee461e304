// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import landfall.cards.crib.FlatJson;
import landfall.cards.crib.ShopLaws;
import landfall.cards.crib.Stock;
import landfall.cards.crib.Told;
import landfall.history.EventKind;
import landfall.history.Happening;
import landfall.history.Price;
import landfall.store.Store;
import landfall.tap.FluteKind;
import org.jdbi.v3.core.Handle;

/** How taps stand on their shelves and what was paid for them, from the columns that are folded; no history is read. */
public final class ShelfRecords {
    private static final int PRICES = 20;

    private final Store store;

    public ShelfRecords(Store store) {
        this.store = store;
    }

    /** Taps by size, with the last price of each; the price of a size that was never bought is not known. */
    public List<Stock.Shelved> shelves() {
        return store.read(handle -> {
            List<Stock.Shelved> shelves = new ArrayList<>();
            for (Stock.Shelved bare : counted(handle)) {
                Price price = bare.usedUp() > 0 ? price(handle, bare.size()).orElse(null) : null;
                shelves.add(new Stock.Shelved(bare.size(), bare.onHand(), bare.usedUp(), price));
            }
            return shelves;
        });
    }

    private static List<Stock.Shelved> counted(Handle handle) {
        return handle.createQuery("select size, sum(case when status in ('broken', 'scrapped') then 0 else 1 end)"
                        + " as kept, sum(case when status in ('broken', 'scrapped') then 1 else 0 end) as gone"
                        + " from item where kind = 'tap' group by size order by size")
                .map((rows, context) ->
                        new Stock.Shelved(rows.getString("size"), rows.getInt("kept"), rows.getInt("gone"), null))
                .list();
    }

    /** The last price that was paid for a tap of a size. */
    public Optional<Price> price(String size) {
        return store.read(handle -> price(handle, size));
    }

    private static Optional<Price> price(Handle handle, String size) {
        return handle
                .createQuery("select event.fields from event join item on item.mark = event.mark"
                        + " where item.kind = 'tap' and item.size = :size and event.kind = 'bought'"
                        + " order by event.at desc limit :most")
                .bind("size", size)
                .bind("most", PRICES)
                .map((rows, context) -> Told.kept(EventKind.BOUGHT, FlatJson.read(rows.getString("fields"))))
                .list()
                .stream()
                .filter(told -> told instanceof Happening.Bought bought && bought.price() != null)
                .map(told -> Objects.requireNonNull(((Happening.Bought) told).price()))
                .findFirst();
    }

    /** When the first thing happened; empty where nothing has. */
    public Optional<Instant> first() {
        return store.read(handle -> handle.createQuery("select min(at) as at from event")
                .map((rows, context) -> {
                    long at = rows.getLong("at");
                    return rows.wasNull() ? Optional.<Instant>empty() : Optional.of(Instant.ofEpochMilli(at));
                })
                .one());
    }

    /** Every kind of tap of which runs are on record. */
    public List<ShopLaws.Key> kinds() {
        return store.read(handle -> handle.createQuery("select distinct size, flutes, material from run"
                        + " where material <> '' order by size, flutes, material")
                .map((rows, context) -> new ShopLaws.Key(
                        rows.getString("size"),
                        FluteKind.valueOf(rows.getString("flutes").toUpperCase(Locale.ROOT)),
                        rows.getString("material")))
                .list());
    }
}
