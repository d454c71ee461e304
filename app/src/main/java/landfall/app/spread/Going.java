// SPDX-License-Identifier: Apache-2.0
package landfall.app.spread;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import landfall.cards.spread.SpreadSetup;
import landfall.cards.spread.SpreadState;
import landfall.spread.Run;
import landfall.spread.Summary;
import org.jspecify.annotations.Nullable;

/** One run: waiting, at work, stopped or done. Several threads look at it while one works. */
final class Going implements Run.Watch {
    /** How it stands. */
    enum Stand {
        WAITS,
        WORKS,
        STOPPED,
        DONE,
        FAILED
    }

    /** What is told of a run while it works. */
    record Told(Stand stand, long samples, long of) {}

    private final String name;
    private final SpreadSetup setup;
    private final List<Consumer<Told>> listeners = new CopyOnWriteArrayList<>();
    private volatile Stand stand;
    private volatile long samples;
    private volatile boolean stopped;
    /** Only the thread that works writes it; others read it when the run stands still. */
    private volatile @Nullable Summary summary;

    Going(String name, SpreadSetup setup, @Nullable Summary summary) {
        this.name = name;
        this.setup = setup;
        this.summary = summary;
        this.samples = summary == null ? 0 : summary.samples();
        this.stand = summary == null ? Stand.WAITS : samples < setup.plan().samples() ? Stand.STOPPED : Stand.DONE;
    }

    String name() {
        return name;
    }

    SpreadSetup setup() {
        return setup;
    }

    Told told() {
        return new Told(stand, samples, setup.plan().samples());
    }

    boolean standsStill() {
        return stand != Stand.WAITS && stand != Stand.WORKS;
    }

    /** What a run that stands still has found; null where it was stopped before its first block. */
    @Nullable
    Summary found() {
        return standsStill() ? summary : null;
    }

    SpreadState state() {
        return new SpreadState(setup, Objects.requireNonNull(summary, "nothing found yet"));
    }

    boolean hasFound() {
        return summary != null;
    }

    void waits() {
        stopped = false;
        stand = Stand.WAITS;
        tell();
    }

    /** Works to the end, or until it is stopped. */
    void work(int threads) {
        if (stopped) {
            settle(Stand.STOPPED);
            return;
        }
        stand = Stand.WORKS;
        tell();
        try {
            summary = setup.run(threads).goOn(summary, this);
            settle(samples < setup.plan().samples() ? Stand.STOPPED : Stand.DONE);
        } catch (RuntimeException e) {
            settle(Stand.FAILED);
            throw e;
        }
    }

    private void settle(Stand settled) {
        stand = settled;
        tell();
    }

    void stop() {
        stopped = true;
    }

    @Override
    public boolean isStopped() {
        return stopped;
    }

    @Override
    public void sofar(Summary found) {
        samples = found.samples();
        tell();
    }

    private void tell() {
        Told told = told();
        listeners.forEach(listener -> listener.accept(told));
    }

    /** Hears of every step from now on, and how it stands at once. */
    void listen(Consumer<Told> listener) {
        listeners.add(listener);
        listener.accept(told());
    }

    void leave(Consumer<Told> listener) {
        listeners.remove(listener);
    }
}
