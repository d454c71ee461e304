// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Rows read by a thread of their own, some hundreds ahead of who takes them, so that reading a table and writing it
 * into a database go on side by side.
 */
final class RowFeed<T> implements AutoCloseable {
    private static final int TOGETHER = 500;
    private static final int AHEAD = 4;

    private final BlockingQueue<Part<T>> parts = new ArrayBlockingQueue<>(AHEAD);
    private final Thread reader;
    private volatile boolean closed;
    private Part<T> part = new Part<>(List.of(), false, null);
    private int at;

    /** @param last whether nothing comes after; then why, where reading failed */
    private record Part<T>(
            List<T> rows, boolean last, @Nullable RuntimeException fault) {}

    /** @param source gives null after the last */
    RowFeed(Supplier<@Nullable T> source) {
        reader = new Thread(() -> read(source), "reading a table");
        reader.setDaemon(true);
        reader.start();
    }

    private void read(Supplier<@Nullable T> source) {
        List<T> rows = new ArrayList<>();
        try {
            for (T row = source.get(); row != null; row = source.get()) {
                rows.add(row);
                if (rows.size() == TOGETHER) {
                    put(new Part<>(rows, false, null));
                    rows = new ArrayList<>();
                }
                if (closed) {
                    return;
                }
            }
            put(new Part<>(rows, true, null));
        } catch (RuntimeException e) {
            put(new Part<>(rows, true, e));
        }
    }

    private void put(Part<T> next) {
        try {
            while (!closed && !parts.offer(next, 1, TimeUnit.SECONDS)) {
                Thread.onSpinWait();
            }
        } catch (InterruptedException e) {
            closed = true;
            Thread.currentThread().interrupt();
        }
    }

    /** Null after the last; a fault of the reading comes after the rows that were read before it. */
    @Nullable
    T next() {
        while (at == part.rows.size()) {
            if (part.fault != null) {
                throw part.fault;
            }
            if (part.last) {
                return null;
            }
            try {
                part = parts.take();
                at = 0;
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("interrupted while a table was read", e);
            }
        }
        return part.rows.get(at++);
    }

    @Override
    public void close() {
        closed = true;
        reader.interrupt();
    }
}
