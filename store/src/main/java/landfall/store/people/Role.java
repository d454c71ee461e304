// SPDX-License-Identifier: Apache-2.0
package landfall.store.people;

import java.util.Locale;
import landfall.fault.Answer;
import landfall.fault.Finding;

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

    public static Answer<Role> read(String field, String typed) {
        for (Role role : values()) {
            if (role.word().equalsIgnoreCase(typed.strip())) {
                return Answer.of(role);
            }
        }
        return Answer.refused(new Finding(
                field,
                typed,
                "must be look, use or keep",
                "write look to read, use to write down what happened too, keep to add things and let people in too"));
    }

    public boolean includes(Role needed) {
        return compareTo(needed) >= 0;
    }
}
