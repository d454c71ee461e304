// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import java.util.Locale;

/** Where in its life a thing stands. */
public enum Status {
    ON_HAND,
    ISSUED,
    LENT,
    BROKEN,
    SCRAPPED;

    /** Whether it will never cut again, unless that is taken back. */
    public boolean ended() {
        return this == BROKEN || this == SCRAPPED;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
