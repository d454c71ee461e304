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

    private static final System.Logger LOG = System.getLogger(Refold.class.getName());
    private static final long WORD_EVERY_MS = 2000;

    private Refold() {}

    /** The same, telling whoever reads the log how far it has come where it takes its time. */
    static void bring(Store store) {
        long[] next = {System.currentTimeMillis() + WORD_EVERY_MS};
        bring(store, done -> {
            long now = System.currentTimeMillis();
            if (now >= next[0]) {
                next[0] = now + WORD_EVERY_MS;
                LOG.log(
                        System.Logger.Level.INFO,
                        "records of an earlier program are brought to the present form: {0} things done, {1} to go;"
                                + " whoever stops it loses nothing",
                        done,
                        store.read(Refold::toGo));
            }
        });
    }

    private static long toGo(Handle handle) {
        return handle.createQuery("select count(*) from item where folded = ''")
                .mapTo(Long.class)
                .one();
    }

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
