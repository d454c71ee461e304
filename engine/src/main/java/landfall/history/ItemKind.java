// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** What a crib holds, and what can happen to each. */
public enum ItemKind {
    TAP('T', EnumSet.complementOf(EnumSet.of(EventKind.CALIBRATED))),
    FIXTURE('F', any(EventKind.MEASURED, EventKind.INSPECTED)),
    WHEEL('W', any(EventKind.MEASURED, EventKind.BROKEN)),
    DRILL('D', any(EventKind.SHARPENED, EventKind.BROKEN)),
    GAUGE('G', any(EventKind.MEASURED, EventKind.CALIBRATED, EventKind.INSPECTED));

    private final char letter;
    private final Set<EventKind> happens;

    ItemKind(char letter, Set<EventKind> happens) {
        this.letter = letter;
        this.happens = happens;
    }

    private static Set<EventKind> any(EventKind... more) {
        EnumSet<EventKind> all = EnumSet.of(
                EventKind.BOUGHT,
                EventKind.ISSUED,
                EventKind.RETURNED,
                EventKind.MOVED,
                EventKind.LENT,
                EventKind.SCRAPPED,
                EventKind.CORRECTED);
        all.addAll(Set.of(more));
        return all;
    }

    /** The letter that its marks begin with when the program numbers them. */
    public char letter() {
        return letter;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether such an event can happen to it at all. */
    public boolean knows(EventKind kind) {
        return happens.contains(kind);
    }
}
