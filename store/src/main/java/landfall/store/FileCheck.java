// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * Looks a file over before it is used: after a program that wrote it was not ended in order, and at least once a day.
 * SQLite's own quick check reads every page, a second for some hundred megabytes, which is too long for each command.
 */
final class FileCheck {
    private static final String NOTE = "file-looked-over";
    private static final Duration GOOD_FOR = Duration.ofDays(1);

    private static final System.Logger LOG = System.getLogger(FileCheck.class.getName());

    private FileCheck() {}

    static void look(Store store, boolean closedInOrder, Clock clock) {
        Instant now = clock.instant();
        boolean due = store.read(handle -> isDue(handle, now));
        if (closedInOrder && !due) {
            return;
        }
        List<String> found = store.read(handle ->
                handle.createQuery("pragma quick_check(5)").mapTo(String.class).list());
        if (!found.equals(List.of("ok"))) {
            throw new StoreFault(
                    store.address().words(),
                    "is damaged: " + String.join("; ", found),
                    "keep the file, and restore the last backup into a new one: landfall crib restore FILE --store NEW",
                    new IllegalStateException("quick_check"));
        }
        keepDay(store, now);
    }

    /** A store on a full disk can be read all the same; it is looked over again the next time. */
    private static void keepDay(Store store, Instant now) {
        try {
            store.write(handle -> {
                if (Notes.there(handle)) {
                    Notes.tell(handle, NOTE, now.toString());
                }
                return handle;
            });
        } catch (StoreFault e) {
            LOG.log(System.Logger.Level.DEBUG, "not kept that the file was looked over", e);
        }
    }

    private static boolean isDue(Handle handle, Instant now) {
        Optional<String> told = Notes.there(handle) ? Notes.told(handle, NOTE) : Optional.empty();
        return told.map(text -> Instant.parse(text).plus(GOOD_FOR).isBefore(now))
                .orElse(true);
    }
}
