// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import java.time.Instant;
import java.util.Map;
import landfall.fault.Answer;
import landfall.history.Mark;

/**
 * One row of a table: the cells that hold something, by what their columns are called here.
 *
 * @param mark as the row tells it
 * @param at when it happened; now where the row does not tell
 */
record Line(long number, Map<String, String> cells, Answer<Mark> mark, Answer<Instant> at) {
    String cell(String column) {
        return cells.getOrDefault(column, "");
    }
}
