// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.util.List;
import java.util.function.LongConsumer;
import landfall.history.Mark;
import landfall.store.Store;
import org.jdbi.v3.core.Handle;

/** Folds things anew from their events: those that an earlier program folded by its own rules, or all of them. */
public final class Refold {
    private static final int AT_ONCE = 200;

    private Refold() {}

    /**
     * Brings what an earlier program folded to the present rules, some things in each transaction; whoever stops it
     * loses nothing, and the next goes on.
     *
     * @param progress told the number of things done, now and then
     */
    public static void bring(Store store, LongConsumer progress) {
        long done = 0;
        while (store.read(Refold::some).size() > 0) {
            done += store.write(handle -> {
                List<Mark> some = some(handle);
                some.forEach(mark -> anew(handle, mark));
                return some.size();
            });
            progress.accept(done);
        }
    }

    /** Forgets all that was folded and folds it again from the events. */
    public static void all(Store store, LongConsumer progress) {
        store.write(handle -> handle.execute("update item set folded = ''"));
        bring(store, progress);
    }

    private static List<Mark> some(Handle handle) {
        return handle.createQuery("select mark from item where folded = '' order by mark limit " + AT_ONCE)
                .mapTo(String.class)
                .map(Mark::new)
                .list();
    }

    private static void anew(Handle handle, Mark mark) {
        ItemRows.hold(handle, mark);
        Ledger ledger = Ledger.of(handle, mark).orElseThrow();
        ledger.foldAnew(EventRows.history(handle, mark));
        Writes writes = Writes.of(handle);
        ledger.write(handle, writes);
        writes.send();
        writes.close();
    }
}
