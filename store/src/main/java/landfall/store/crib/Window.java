// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

/**
 * A part of a long history: the last events before a number.
 *
 * @param before number of an event; those with less are meant
 * @param most how many
 */
public record Window(long before, int most) {
    /** The newest of all. */
    public static Window newest(int most) {
        return new Window(Long.MAX_VALUE, most);
    }
}
