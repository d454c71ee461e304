// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import landfall.cards.words.Words;
import landfall.spread.Run;
import landfall.spread.Summary;

/** Tells how far a run is, on standard error, and carries a stop to it. */
final class SpreadProgress implements Run.Watch {
    private static final long EVERY_NS = TimeUnit.SECONDS.toNanos(2);
    private static final long PATIENCE_S = 20;

    private final long all;
    private final Terminal terminal;
    private final CountDownLatch ended = new CountDownLatch(1);
    private final long began = System.nanoTime();
    private long told = began;
    private final long from;
    private volatile boolean stopped;

    /**
     * @param all set-ups that are to be made
     * @param from how many of them were made before
     */
    SpreadProgress(long all, long from, Terminal terminal) {
        this.all = all;
        this.from = from;
        this.terminal = terminal;
    }

    @Override
    public boolean isStopped() {
        return stopped;
    }

    @Override
    public void sofar(Summary summary) {
        long now = System.nanoTime();
        if (now - told < EVERY_NS) {
            return;
        }
        told = now;
        double perSample = (double) (now - began) / Math.max(1, summary.samples() - from);
        long left = Math.round(perSample * (all - summary.samples()) / TimeUnit.SECONDS.toNanos(1));
        terminal.err()
                .println(Words.of(
                        "spread.progress",
                        Long.toString(summary.samples()),
                        Long.toString(all),
                        Long.toString(100 * summary.samples() / all),
                        Long.toString(left)));
    }

    /** For the program's end: stops the run, and waits until what there is has been written. */
    void stopAndWait() {
        stopped = true;
        try {
            if (!ended.await(PATIENCE_S, TimeUnit.SECONDS)) {
                terminal.err().println(Words.of("spread.notStopped"));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    void done() {
        ended.countDown();
    }
}
