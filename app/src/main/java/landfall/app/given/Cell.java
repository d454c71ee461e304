// SPDX-License-Identifier: Apache-2.0
package landfall.app.given;

import java.util.List;

/**
 * One field on a page.
 *
 * @param means what the field is, in a sentence
 * @param value what was typed
 * @param example a text that would be accepted
 * @param finding why it was refused and how to mend it; empty when nothing is wrong
 * @param choices the words to choose from; none when anything may be typed
 */
public record Cell(
        String path, String label, String means, String value, String example, String finding, List<String> choices) {

    /** For the page: an id made of the path. */
    public String id() {
        return "give-" + path.replace('.', '-');
    }

    /** Some fields are a table of several lines. */
    public boolean hasLines() {
        return example.indexOf('\n') >= 0 || value.indexOf('\n') >= 0;
    }

    public boolean isWrong() {
        return !finding.isEmpty();
    }
}
