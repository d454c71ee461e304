// SPDX-License-Identifier: Apache-2.0
package landfall.app.given;

import java.util.List;

/**
 * One field on a page.
 *
 * @param id on its page
 * @param means what the field is, in a sentence
 * @param value what was typed
 * @param example a text that would be accepted
 * @param finding why it was refused and how to mend it; empty when nothing is wrong
 * @param choices the words to choose from; none when anything may be typed
 * @param unchosen what stands there while none of them is chosen
 */
public record Cell(
        String id,
        String path,
        String label,
        String means,
        String value,
        String example,
        String finding,
        List<String> choices,
        String unchosen) {

    /** The id that a path gives. */
    public static String id(String path) {
        return "give-" + path.replace('.', '-');
    }

    /** The same under another id, where a page asks for two things of one path. */
    public Cell of(String part) {
        return new Cell(part + "-" + id, path, label, means, value, example, finding, choices, unchosen);
    }

    /** Some fields are a table of several lines. */
    public boolean hasLines() {
        return example.indexOf('\n') >= 0 || value.indexOf('\n') >= 0;
    }

    public boolean isWrong() {
        return !finding.isEmpty();
    }
}
