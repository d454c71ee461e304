// SPDX-License-Identifier: Apache-2.0
package landfall.history;

/** What can happen to a thing that is kept in the crib. */
public enum EventKind {
    BOUGHT,
    ISSUED,
    RETURNED,
    TAPPED,
    MEASURED,
    SHARPENED,
    INSPECTED,
    MOVED,
    LENT,
    COATED,
    CALIBRATED,
    BROKEN,
    SCRAPPED,
    CORRECTED;

    /** As it is written on the command line and in records: {@code tapped}. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
