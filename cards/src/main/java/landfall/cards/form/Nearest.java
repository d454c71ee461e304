// SPDX-License-Identifier: Apache-2.0
package landfall.cards.form;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The word that a mistyped one was probably meant to be: by the fewest letters put in, left out, changed or swapped.
 */
public final class Nearest {
    private Nearest() {}

    /** The nearest of the words; the first of equals. */
    public static String of(String typed, Collection<String> words) {
        return of(typed, words, 1).get(0);
    }

    /** The nearest several, best first. */
    public static List<String> of(String typed, Collection<String> words, int count) {
        if (words.isEmpty()) {
            throw new IllegalStateException("nothing to choose from for " + typed);
        }
        String asked = typed.toLowerCase(Locale.ROOT);
        return words.stream()
                .sorted(Comparator.comparingInt(word -> apart(asked, word.toLowerCase(Locale.ROOT))))
                .limit(count)
                .toList();
    }

    /**
     * Edits between two words; a swap of neighbours counts one, a shared last part of a path is worth the path before
     * it.
     */
    static int apart(String a, String b) {
        String last = b.substring(b.lastIndexOf('.') + 1);
        int whole = edits(a, b);
        return a.indexOf('.') < 0 && last.length() < b.length() ? Math.min(whole, edits(a, last) + 1) : whole;
    }

    private static int edits(String a, String b) {
        String left = a.substring(0, Math.min(a.length(), 100));
        int[] before = new int[b.length() + 1];
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= left.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = left.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(above[j - 1] + change, 1 + Math.min(above[j], row[j - 1]));
                if (i > 1 && j > 1 && left.charAt(i - 1) == b.charAt(j - 2) && left.charAt(i - 2) == b.charAt(j - 1)) {
                    row[j] = Math.min(row[j], before[j - 2] + 1);
                }
            }
            before = above;
            above = row;
        }
        return above[b.length()];
    }
}
