// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Clock;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** An open store. Reading may go on beside writing; writers of one file take turns. */
public final class Store implements AutoCloseable {
    private final StoreAddress address;
    private final HikariDataSource writerPool;
    private final HikariDataSource readerPool;
    private final Jdbi writer;
    private final Jdbi reader;

    Store(StoreAddress address, HikariDataSource writerPool, HikariDataSource readerPool) {
        this.address = address;
        this.writerPool = writerPool;
        this.readerPool = readerPool;
        this.writer = Jdbi.create(writerPool);
        this.reader = Jdbi.create(readerPool);
    }

    /**
     * Opens a store: made when it is not there, looked over after it was not closed in order, brought to the form that
     * this program knows with a copy made before.
     *
     * @throws StoreFault when it cannot be used
     */
    public static Store open(StoreAddress address, Clock clock) {
        return Opening.of(address, clock);
    }

    public StoreAddress address() {
        return address;
    }

    public boolean isFile() {
        return address instanceof StoreAddress.InFile;
    }

    /** One transaction: all of it is kept, or nothing. */
    public <T> T write(Function<Handle, T> work) {
        try {
            return writer.inTransaction(work::apply);
        } catch (JdbiException e) {
            throw Trouble.of(address, e);
        }
    }

    /** Looks without changing; what it sees is of one moment. */
    public <T> T read(Function<Handle, T> work) {
        try {
            return reader.inTransaction(work::apply);
        } catch (JdbiException e) {
            throw Trouble.of(address, e);
        }
    }

    /** Work that a database refuses inside a transaction. */
    <T> T alone(Function<Handle, T> work) {
        try {
            return writer.withHandle(work::apply);
        } catch (JdbiException e) {
            throw Trouble.of(address, e);
        }
    }

    @Override
    public void close() {
        readerPool.close();
        writerPool.close();
    }
}
