// SPDX-License-Identifier: Apache-2.0
package landfall.store.bulk;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZonedDateTime;
import java.util.Locale;
import java.util.Map;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.table.Report;
import landfall.store.table.TableIn;
import landfall.store.table.Wish;

/**
 * Imports made tables into a new store and says in one line what came of it: seconds, rows, added, bad, and the most
 * memory that was in use. A program of its own, so that it can be given a small heap.
 *
 * <p>Arguments: the store's file, then tables.
 */
final class BulkImport {
    private BulkImport() {}

    public static void main(String[] args) throws IOException {
        Wish wish = new Wish(Map.of(), new Wish.How(false, false, false), "Ida", ZonedDateTime.now(Clock.systemUTC()));
        StoreAddress address = StoreAddress.read(args[0]).orThrow();
        try (Store store = Store.open(address, Clock.systemUTC())) {
            for (int i = 1; i < args.length; i++) {
                long[] most = new long[1];
                long begin = System.nanoTime();
                Report report;
                try (BufferedReader in = Files.newBufferedReader(Path.of(args[i]))) {
                    report = TableIn.read(store, in, wish, rows -> {
                                Runtime runtime = Runtime.getRuntime();
                                most[0] = Math.max(most[0], runtime.totalMemory() - runtime.freeMemory());
                                return false;
                            })
                            .orThrow();
                }
                System.out.println(String.format(
                        Locale.ROOT,
                        "seconds=%.2f rows=%d added=%d unchanged=%d bad=%d heapMB=%d",
                        (System.nanoTime() - begin) / 1e9,
                        report.rows(),
                        report.addedRows(),
                        report.unchangedRows(),
                        report.badRows(),
                        most[0] >> 20));
            }
        }
    }
}
