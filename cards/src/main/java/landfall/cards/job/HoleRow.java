// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A line of holes as it was typed.
 *
 * @param at where it stands in what was given: the line of the file, the entry of the list, the row of the page; from 1
 */
public record HoleRow(int at, Map<String, String> cells) {
    public HoleRow {
        cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }
}
