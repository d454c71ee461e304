// SPDX-License-Identifier: Apache-2.0
package landfall.cards.form;

import landfall.cards.words.Words;

/**
 * One thing that a person can give.
 *
 * @param path where it stands in a card, and what it is called on the command line and in an address:
 *     {@code flutes.count}
 * @param words what the words of the field are found by; the path in most forms
 * @param example a text that is accepted
 */
public record Field<T>(String path, String words, Kind<T> kind, boolean required, String example) {
    public static <T> Field<T> needed(String path, Kind<T> kind, String example) {
        return new Field<>(path, path, kind, true, example);
    }

    public static <T> Field<T> optional(String path, Kind<T> kind, String example) {
        return new Field<>(path, path, kind, false, example);
    }

    /** The same field under other words, where two forms mean different things by one path. */
    public Field<T> worded(String other) {
        return new Field<>(path, other, kind, required, example);
    }

    Field<T> eased() {
        return new Field<>(path, words, kind, false, example);
    }

    /** The same field in a form that can do without it. */
    public Field<T> leftOpen() {
        return new Field<>(path, words, kind, false, example);
    }

    /** What it is, in a few words. */
    public String means() {
        return Words.of("field." + words);
    }
}
