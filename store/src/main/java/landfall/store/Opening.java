// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.util.Objects;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** Opens stores of both kinds. */
final class Opening {
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final int READERS = 4;
    private static final int AT_ONCE = 8;

    /** Of pages, each connection; SQLite takes a negative number for kilobytes. */
    private static final int WRITERS_CACHE_KB = -32_000;

    private static final int READERS_CACHE_KB = -8_000;

    private Opening() {}

    static Store of(StoreAddress address, Clock clock) {
        try {
            return address instanceof StoreAddress.InFile file
                    ? file(file, clock)
                    : server((StoreAddress.OnServer) address, clock);
        } catch (StoreFault e) {
            throw e;
        } catch (UncheckedIOException e) {
            throw new StoreFault(
                    address.words(), "cannot be made: " + e.getMessage(), "choose a folder that can be written", e);
        } catch (RuntimeException e) {
            throw Trouble.of(address, e);
        }
    }

    private static Store file(StoreAddress.InFile address, Clock clock) {
        Path path = address.path();
        boolean closedInOrder = closedInOrder(path);
        try {
            Files.createDirectories(Objects.requireNonNull(path.getParent()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        knock(address);
        Store store = new Store(address, pool(sqlite(path, false), 1), pool(sqlite(path, true), READERS));
        try {
            FileCheck.look(store, closedInOrder, clock);
            Migration.bring(store, sqlite(path, false), clock);
        } catch (RuntimeException e) {
            store.close();
            throw e;
        }
        return store;
    }

    /** A pool tries for long; what cannot be opened at all is told at once. */
    private static void knock(StoreAddress.InFile address) {
        try (Connection connection = sqlite(address.path(), true).getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("select count(*) from sqlite_master");
        } catch (SQLException e) {
            throw Trouble.of(address, e);
        }
    }

    /** A log with something in it was left by a program that did not end by itself. */
    private static boolean closedInOrder(Path path) {
        Path log = path.resolveSibling(path.getFileName() + "-wal");
        try {
            return !Files.exists(log) || Files.size(log) == 0;
        } catch (IOException e) {
            return false;
        }
    }

    private static Store server(StoreAddress.OnServer address, Clock clock) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(address.jdbc());
        config.setUsername(address.login().user());
        config.setPassword(address.login().password());
        config.addDataSourceProperty("reWriteBatchedInserts", "true");
        config.addDataSourceProperty("ApplicationName", "landfall");
        config.setMaximumPoolSize(AT_ONCE);
        config.setInitializationFailTimeout(1);
        HikariDataSource pool = pool(config);
        Store store = new Store(address, pool, pool);
        try {
            Migration.bring(store, pool, clock);
        } catch (RuntimeException e) {
            store.close();
            throw e;
        }
        return store;
    }

    private static SQLiteDataSource sqlite(Path path, boolean reading) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setCacheSize(reading ? READERS_CACHE_KB : WRITERS_CACHE_KB);
        config.setBusyTimeout((int) PATIENCE.toMillis());
        config.setTransactionMode(
                reading ? SQLiteConfig.TransactionMode.DEFERRED : SQLiteConfig.TransactionMode.IMMEDIATE);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + path);
        return source;
    }

    private static HikariDataSource pool(SQLiteDataSource source, int size) {
        HikariConfig config = new HikariConfig();
        config.setDataSource(source);
        config.setMaximumPoolSize(size);
        config.setInitializationFailTimeout(-1);
        return pool(config);
    }

    private static HikariDataSource pool(HikariConfig config) {
        config.setMinimumIdle(0);
        config.setConnectionTimeout(PATIENCE.toMillis());
        config.setPoolName("store");
        return new HikariDataSource(config);
    }
}
