// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import landfall.spread.Run;
import landfall.spread.Summary;
import org.jspecify.annotations.Nullable;

/**
 * A run that goes on by itself, for a page: asked how far it is, told to stop, its state kept to go on with.
 *
 * <pre>
 * SpreadRunning running = SpreadRunning.start(setup, null, 2);
 * running.reached().samples();            // so far, of setup.plan().samples()
 * running.latest();                       // what there is so far, for SpreadDocument.of(setup, summary) and drawings
 * running.stop();                         // ends after the blocks in hand
 * running.await(10);
 * new SpreadState(setup, running.latest().orElseThrow()).bytes();      // SpreadState.of(bytes, name) reads it back
 * </pre>
 */
public final class SpreadRunning implements Run.Watch {
    /** A copy of what there is so far is made at most so often. */
    private static final long EVERY_NS = TimeUnit.MILLISECONDS.toNanos(400);

    private final SpreadSetup setup;
    private final CountDownLatch ended = new CountDownLatch(1);
    private volatile boolean stopped;
    private volatile long samples;
    private volatile @Nullable Summary latest;
    private volatile @Nullable String fault;
    private long copied;

    private SpreadRunning(SpreadSetup setup) {
        this.setup = setup;
    }

    /** How far a run is; {@code fault} says why it broke off, where it did. */
    public record Reached(long samples, long of, boolean isEnded, Optional<String> fault) {}

    /** @param from what a stopped run had; null to begin */
    public static SpreadRunning start(SpreadSetup setup, @Nullable Summary from, int threads) {
        SpreadRunning running = new SpreadRunning(setup);
        Thread thread = new Thread(
                () -> running.run(from, threads), "spread of " + setup.wish().question());
        thread.setDaemon(true);
        thread.start();
        return running;
    }

    private void run(@Nullable Summary from, int threads) {
        try {
            latest = setup.run(threads).goOn(from, this);
        } catch (RuntimeException e) {
            fault = String.valueOf(e.getMessage());
        } finally {
            ended.countDown();
        }
    }

    @Override
    public boolean isStopped() {
        return stopped;
    }

    @Override
    public void sofar(Summary summary) {
        samples = summary.samples();
        long now = System.nanoTime();
        if (latest == null || now - copied > EVERY_NS) {
            latest = summary.copy();
            copied = now;
        }
    }

    public SpreadSetup setup() {
        return setup;
    }

    public Reached reached() {
        boolean isEnded = ended.getCount() == 0;
        return new Reached(samples, setup.plan().samples(), isEnded, Optional.ofNullable(fault));
    }

    /** What there was at most half a second ago; all of it once the run has ended. Nothing before the first block. */
    public Optional<Summary> latest() {
        return Optional.ofNullable(latest);
    }

    /** Ends the run after the blocks in hand. */
    public void stop() {
        stopped = true;
    }

    /** Waits for the end; whether it came. */
    public boolean await(int seconds) throws InterruptedException {
        return ended.await(seconds, TimeUnit.SECONDS);
    }
}
