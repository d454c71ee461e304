// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import org.jdbi.v3.core.Handle;

/** The statements that write things, events and what is folded, in the order in which they may be sent. */
record Writes(Bulk item, Bulk event, Bulk run, Bulk runAgain, Bulk fold) {
    static Writes of(Handle handle) {
        return new Writes(
                new Bulk(handle, ItemRows.INSERT),
                new Bulk(handle, EventRows.INSERT),
                new Bulk(handle, RunRows.INSERT),
                new Bulk(handle, RunRows.UPDATE),
                new Bulk(handle, ItemRows.FOLD));
    }

    void send() {
        item.send();
        event.send();
        runAgain.send();
        run.send();
        fold.send();
    }

    void close() {
        item.close();
        event.close();
        runAgain.close();
        run.close();
        fold.close();
    }
}
