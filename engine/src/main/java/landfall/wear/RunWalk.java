// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.time.Instant;
import landfall.history.Event;
import landfall.history.Happening;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/** A walk through a tap's events as they happened: where runs begin and where they end. */
final class RunWalk {
    /** Keeps what happens within runs. */
    interface Keeper {
        /** Whether the run has a hole. */
        boolean hasCut();

        void cut(Happening.Tapped cut);

        void land(Length width);

        /** The run is over and is one. */
        void keep(Run.Span span);

        /** What follows is of another run. */
        void begin();
    }

    private final Keeper keeper;
    private Run.Start start = Run.Start.UNKNOWN;
    private @Nullable Instant from;
    private boolean ended;

    RunWalk(Keeper keeper) {
        this.keeper = keeper;
    }

    /** Goes on with a run that is open. */
    void goOn(Run.Span open) {
        start = open.start();
        from = open.from();
    }

    Run.Span open() {
        return new Run.Span(start, Run.End.OPEN, from);
    }

    boolean hasEnded() {
        return ended;
    }

    void take(Event event) {
        Happening what = event.what();
        if (what instanceof Happening.Bought && !keeper.hasCut() && start == Run.Start.UNKNOWN) {
            start = Run.Start.NEW;
        } else if (what instanceof Happening.Tapped tapped) {
            from = from == null ? event.at() : from;
            keeper.cut(tapped);
        } else if (what instanceof Happening.Measured measured) {
            Length land = measured.sizes().wearLand();
            if (land != null) {
                keeper.land(land);
            }
        } else if (what instanceof Happening.Sharpened) {
            close(Run.End.SHARPENED);
            start = Run.Start.SHARPENED;
            from = event.at();
        } else if (what instanceof Happening.Broken || what instanceof Happening.Scrapped) {
            close(what instanceof Happening.Broken ? Run.End.BROKEN : Run.End.SCRAPPED);
            ended = true;
        }
    }

    /** Runs without a hole are none, but for one that ended with a broken tap. */
    private void close(Run.End end) {
        if (end == Run.End.BROKEN || keeper.hasCut()) {
            keeper.keep(new Run.Span(start, end, from));
        }
        keeper.begin();
        from = null;
    }
}
