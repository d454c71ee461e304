// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import landfall.cards.crib.ShopLaws;
import landfall.cards.crib.Stock;
import landfall.history.Price;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.Stores;
import landfall.store.table.TableIn;
import landfall.store.table.Wish;
import landfall.tap.FluteKind;
import landfall.wear.Brief;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is read of shelves, prices and sharpenings, in either kind of store, by one that stays open and by new ones. */
class ShelfRecordsTest {
    private static final ShopLaws.Key M8 = new ShopLaws.Key("M8x1.25", FluteKind.STRAIGHT, "1045");

    static Stream<StoreAddress> stores() {
        return Stores.both();
    }

    private static void read(Store store, String table) {
        Wish wish = new Wish(
                Map.of(), new Wish.How(false, false, false), "Ida", ZonedDateTime.parse("2026-11-25T08:00:00Z"));
        assertThat(TableIn.read(store, new StringReader(table), wish, TableIn.Watch.NOBODY)
                        .orThrow()
                        .bad())
                .isEmpty();
    }

    private static void fill(Store store) {
        read(store, """
                mark,kind,thread,gauge
                A-1,tap,M8x1.25-6H,
                A-2,tap,M8x1.25-6H,
                B-1,tap,M6x1-6H,
                C-1,tap,M4x0.7-6H,
                D-1,tap,M5x0.8-6H,
                G-1,gauge,M8x1.25-6H,GO plug
                """);
        read(store, """
                mark,event,at,holes,material,way,price,to
                A-1,bought,2024-02-01T08:00:00Z,,,,18.50 EUR,
                A-2,bought,2025-02-01T08:00:00Z,,,,21 EUR,
                B-1,bought,2025-03-01T08:00:00Z,,,,,
                A-1,tapped,2025-03-02T08:00:00Z,80,1045,,,
                A-1,sharpened,2025-12-31T08:00:00Z,,,chamfer,,
                A-1,tapped,2026-01-02T08:00:00Z,70,1045,,,
                A-1,sharpened,2026-03-01T08:00:00Z,,,chamfer,,
                A-1,tapped,2026-03-02T08:00:00Z,60,1045,,,
                A-2,broken,2026-03-02T08:00:00Z,,,,,
                G-1,lent,2024-01-01T08:00:00Z,,,,,Hollow Lane
                """);
    }

    @ParameterizedTest
    @MethodSource("stores")
    void shelvesAreCountedPricedAndDatedAndFollowWhatHappensMeanwhile(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            ShelfRecords open = new ShelfRecords(store);
            assertThat(open.shelves()).isEmpty();
            assertThat(open.first()).isEmpty();
            fill(store);
            holds(open, "21", 1, "2024-01-01T08:00:00Z");
            holds(new ShelfRecords(store), "21", 1, "2024-01-01T08:00:00Z");
            read(store, """
                    mark,event,at,price,ticket
                    A-1,bought,2026-05-01T08:00:00Z,24 EUR,late
                    A-1,broken,2023-05-01T08:00:00Z,,old
                    """);
            holds(open, "24", 2, "2023-05-01T08:00:00Z");
            holds(new ShelfRecords(store), "24", 2, "2023-05-01T08:00:00Z");
        }
    }

    private static void holds(ShelfRecords records, String price, int gone, String first) {
        Price paid = new Price(new BigDecimal(price), "EUR");
        assertThat(records.shelves())
                .containsExactly(
                        new Stock.Shelved("M4x0.7", 1, 0, null),
                        new Stock.Shelved("M5x0.8", 1, 0, null),
                        new Stock.Shelved("M6x1", 1, 0, null),
                        new Stock.Shelved("M8x1.25", 2 - gone, gone, paid));
        assertThat(records.price("M8x1.25")).contains(paid);
        assertThat(records.price("M6x1")).isEmpty();
        assertThat(records.first()).contains(Instant.parse(first));
    }

    @ParameterizedTest
    @MethodSource("stores")
    void runsThatASharpeningOfTheYearBeganAreFoundByTheirLaw(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            fill(store);
            RunRecords runs = new RunRecords(store);
            RunRecords.Stamp before = runs.stamp();
            assertThat(runs.laws(null)).isEqualTo(runs.laws("M8x1.25")).containsExactly(M8);
            Map<ShopLaws.Key, List<Brief>> year =
                    runs.sharpened(Instant.parse("2026-01-01T00:00:00Z"), Instant.parse("2027-01-01T00:00:00Z"));
            assertThat(year).containsOnlyKeys(M8);
            assertThat(year.get(M8)).extracting(Brief::holes).containsExactly(60L);
            assertThat(runs.sharpened(Instant.parse("2025-12-31T08:00:00Z"), Instant.parse("2026-03-01T08:00:00Z"))
                            .get(M8))
                    .extracting(Brief::holes)
                    .containsExactly(70L);
            read(store, "mark,event,at,holes,material\nA-1,tapped,2026-04-01T08:00:00Z,5,1045\n");
            assertThat(runs.stamp()).isNotEqualTo(before);
        }
    }
}
