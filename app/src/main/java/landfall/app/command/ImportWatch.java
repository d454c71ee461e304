// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.PrintStream;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import landfall.cards.words.Words;
import landfall.store.table.TableIn;

/**
 * Tells on standard error how far an import has come, and ends it in order when somebody stops the program: what was
 * read so far is kept and told before the program ends.
 */
final class ImportWatch implements TableIn.Watch, AutoCloseable {
    private static final long FIRST_WORD_MS = 1000;
    private static final long NEXT_WORD_MS = 500;
    private static final long NEXT_LINE_MS = 10_000;
    private static final long LAST_WORDS_S = 60;

    private final PrintStream err;
    private final boolean console = System.console() != null;
    private final CountDownLatch told = new CountDownLatch(1);
    private final Thread onStop = new Thread(this::stop);
    private long next = System.currentTimeMillis() + FIRST_WORD_MS;
    private boolean wrote;
    private volatile boolean stopped;

    ImportWatch(PrintStream err) {
        this.err = err;
        Runtime.getRuntime().addShutdownHook(onStop);
    }

    private void stop() {
        stopped = true;
        try {
            if (!told.await(LAST_WORDS_S, TimeUnit.SECONDS)) {
                err.println(Words.of("crib.notStopped"));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public boolean stopsAfter(long rows) {
        long now = System.currentTimeMillis();
        if (now >= next) {
            next = now + (console ? NEXT_WORD_MS : NEXT_LINE_MS);
            wrote = true;
            err.print((console ? "\r" : "") + Words.of("crib.rowsRead", rows) + (console ? "" : "\n"));
            err.flush();
        }
        return stopped;
    }

    /** After the last word about the import. */
    @Override
    public void close() {
        if (console && wrote) {
            err.println();
        }
        told.countDown();
        if (!stopped) {
            Runtime.getRuntime().removeShutdownHook(onStop);
        }
    }
}
