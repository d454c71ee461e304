// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.stream.Stream;

/** New stores of both kinds for a test that must hold on either. */
public final class Stores {
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);

    private Stores() {}

    public static Stream<StoreAddress> both() {
        return Stream.of(newFile(), PostgresServer.newBase());
    }

    public static StoreAddress.InFile newFile() {
        try {
            return new StoreAddress.InFile(
                    Files.createTempDirectory("crib").resolve("crib.db").toAbsolutePath());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Store open(StoreAddress address) {
        return Store.open(address, CLOCK);
    }
}
