// SPDX-License-Identifier: Apache-2.0
package landfall.working;

/**
 * Where a formula or a figure comes from: a key of {@code sources.bib} and the place in it.
 *
 * @param key bibliography key
 * @param where clause, table, page or equation; may be empty
 */
public record Source(String key, String where) {
    public Source {
        if (key.isBlank()) {
            throw new IllegalArgumentException("a source needs a key");
        }
    }

    public static Source of(String key, String where) {
        return new Source(key, where);
    }

    /** Another place in the same publication. */
    public Source at(String place) {
        return new Source(key, place);
    }

    public String words() {
        return where.isEmpty() ? key : key + ", " + where;
    }
}
