// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import java.sql.SQLException;
import java.util.Locale;

/** What a database complains of, in words that say what to do. */
final class Trouble {
    private Trouble() {}

    static StoreFault of(StoreAddress address, Throwable fault) {
        String said = said(fault);
        String lower = said.toLowerCase(Locale.ROOT);
        if (lower.contains("sqlite_full") || lower.contains("no space left") || lower.contains("disk full")) {
            return fault(
                    address, "is on a disk that is full; nothing of this was kept", "make room and do it again", fault);
        }
        if (lower.contains("sqlite_busy") || lower.contains("sqlite_locked")) {
            return fault(address, "is being written by another program", "wait for it to end and do it again", fault);
        }
        if (lower.contains("sqlite_notadb") || lower.contains("sqlite_corrupt") || lower.contains("malformed")) {
            return fault(
                    address,
                    "is damaged, or is not a crib",
                    "restore the last backup: landfall crib restore FILE",
                    fault);
        }
        if (lower.contains("sqlite_readonly") || lower.contains("sqlite_cantopen") || lower.contains("denied")) {
            return fault(
                    address, "cannot be opened for writing", "look at the rights of the file and its folder", fault);
        }
        if (lower.contains("connection") || lower.contains("password") || lower.contains("does not exist")) {
            return fault(
                    address,
                    "does not answer: " + said,
                    "look whether the server runs, and at name and password",
                    fault);
        }
        return fault(address, "failed: " + said, "do it again; if it fails again, run landfall check", fault);
    }

    private static StoreFault fault(StoreAddress address, String why, String mend, Throwable cause) {
        return new StoreFault(address.words(), why, mend, cause);
    }

    /** The innermost SQL complaint. */
    private static String said(Throwable fault) {
        String said = String.valueOf(fault.getMessage());
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException) {
                said = String.valueOf(cause.getMessage());
            }
        }
        return said.lines().findFirst().orElse("");
    }
}
