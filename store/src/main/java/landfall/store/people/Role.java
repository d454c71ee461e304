// SPDX-License-Identifier: Apache-2.0
package landfall.store.people;

import java.util.Locale;

/** What a person may do; each role may do what those before it may. */
public enum Role {
    /** Read the crib's pages. */
    LOOK,
    /** Write down what happened to things. */
    USE,
    /** Add things, take events back, read tables in, let people in. */
    KEEP;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public boolean includes(Role needed) {
        return compareTo(needed) >= 0;
    }
}
