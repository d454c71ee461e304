// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import java.time.Clock;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.crib.Crib;
import landfall.store.crib.RunRecords;
import landfall.store.crib.ShelfRecords;
import landfall.store.people.People;
import landfall.store.people.SignIns;
import org.jspecify.annotations.Nullable;

/** The store behind the pages, opened when somebody first looks into the crib. */
public final class CribDoor implements AutoCloseable {
    private final StoreAddress address;
    private final Clock clock;
    private @Nullable Store store;
    private @Nullable DueTaps due;
    private @Nullable ShelfRecords shelves;

    public CribDoor(StoreAddress address, Clock clock) {
        this.address = address;
        this.clock = clock;
    }

    public Clock clock() {
        return clock;
    }

    public Crib crib() {
        return new Crib(store());
    }

    /** When taps are due; the laws that were worked out are kept as long as the door is open. */
    public synchronized DueTaps due() {
        DueTaps open = due;
        if (open == null) {
            open = new DueTaps(store());
            due = open;
        }
        return open;
    }

    /** How taps stand on their shelves; what was read of them is kept as long as the door is open. */
    synchronized ShelfRecords shelves() {
        ShelfRecords open = shelves;
        if (open == null) {
            open = new ShelfRecords(store());
            shelves = open;
        }
        return open;
    }

    /** Runs of the shop's taps. */
    RunRecords runs() {
        return new RunRecords(store());
    }

    /** The people of that store. */
    public People people() {
        return new People(store(), clock);
    }

    /** Who has signed in to that store. */
    public SignIns signIns() {
        return new SignIns(store(), clock);
    }

    /** The open store. */
    public synchronized Store store() {
        Store open = store;
        if (open == null) {
            open = Store.open(address, clock);
            store = open;
        }
        return open;
    }

    @Override
    public synchronized void close() {
        if (store != null) {
            store.close();
            store = null;
            due = null;
            shelves = null;
        }
    }
}
