// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A run on one machine: blocks are worked on by several threads and merged in their order. It can be stopped after any
 * block and gone on with from what it had.
 *
 * @param plan what to do
 * @param model what is asked
 * @param threads how many work at once
 */
public record Run(Plan plan, Model model, int threads) {
    public Run {
        if (threads < 1) {
            throw new IllegalArgumentException("threads: " + threads);
        }
    }

    /** Who follows a run. */
    public interface Watch {
        Watch NONE = new Watch() {};

        /** Whether to stop; asked after every block. */
        default boolean isStopped() {
            return false;
        }

        /** What there is so far, after every block; only to be read, and only meanwhile. */
        default void sofar(Summary summary) {}

        /** Takes the set-ups themselves, in their order. */
        default void rows(long first, double[][] inputs, double[][] results) {}

        static Watch of(BooleanSupplier stopped, Consumer<Summary> told) {
            return new Watch() {
                @Override
                public boolean isStopped() {
                    return stopped.getAsBoolean();
                }

                @Override
                public void sofar(Summary summary) {
                    told.accept(summary);
                }
            };
        }
    }

    private record Found(Summary summary, List<Kept> rows) {}

    private record Kept(long first, double[][] inputs, double[][] results) {}

    /** Runs to the end or until stopped. */
    public Summary go(Watch watch) {
        return goOn(null, watch);
    }

    /** Goes on from a summary of the same plan's first blocks. */
    public Summary goOn(@Nullable Summary from, Watch watch) {
        Summary all = from;
        if (all == null) {
            Found first = block(0, null);
            hand(first, watch);
            all = first.summary;
            watch.sofar(all);
        }
        if (all.blocks() < plan.blocks() && !watch.isStopped()) {
            spread(all, watch);
        }
        return all;
    }

    private void spread(Summary all, Watch watch) {
        List<Frame> frames = all.frames();
        ExecutorService workers = Executors.newFixedThreadPool(threads, work -> {
            Thread thread = new Thread(work, "spread");
            thread.setDaemon(true);
            return thread;
        });
        try {
            Deque<Future<Found>> ahead = new ArrayDeque<>();
            long next = all.blocks();
            while (!watch.isStopped() && (next < plan.blocks() || !ahead.isEmpty())) {
                while (next < plan.blocks() && ahead.size() < 4 * threads) {
                    long index = next++;
                    ahead.add(workers.submit(() -> block(index, frames)));
                }
                Found found = taken(ahead.remove());
                hand(found, watch);
                all.merge(found.summary);
                watch.sofar(all);
            }
        } finally {
            workers.shutdownNow();
        }
    }

    private Found block(long index, @Nullable List<Frame> frames) {
        List<Kept> kept = new ArrayList<>();
        Summary summary = Block.of(
                plan, model, index, frames, (first, inputs, results) -> kept.add(new Kept(first, inputs, results)));
        return new Found(summary, kept);
    }

    private static void hand(Found found, Watch watch) {
        found.rows.forEach(kept -> watch.rows(kept.first, kept.inputs, kept.results));
    }

    private static Found taken(Future<Found> future) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a block failed: " + e.getCause(), e.getCause());
        }
    }
}
