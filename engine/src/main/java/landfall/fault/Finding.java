// SPDX-License-Identifier: Apache-2.0
package landfall.fault;

/** What is wrong with one field: what it is, what was given, why that cannot be, and how to mend it. */
public record Finding(String field, String given, String why, String mend) {
    /** As a person reads it. */
    public String sentence() {
        return "%s: \"%s\" %s. To mend: %s.".formatted(field, given, why, mend);
    }

    /** The same finding about a field inside a larger thing, such as a card. */
    public Finding under(String prefix) {
        return new Finding(prefix + "." + field, given, why, mend);
    }
}
