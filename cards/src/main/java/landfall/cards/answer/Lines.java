// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import java.util.List;

/** Plain text of 80 columns, for answers that are not laid out as a document. */
public final class Lines {
    private Lines() {}

    /** A text in lines of at most 80 columns, each after its indent; the first has a head before it. */
    public static List<String> wrapped(String head, int indent, String text) {
        return Lay.wrap(head, indent, text);
    }
}
