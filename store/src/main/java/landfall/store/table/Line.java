// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import java.util.Map;

/** One row of a table: the cells that hold something, by what their columns are called here. */
record Line(long number, Map<String, String> cells) {
    String cell(String column) {
        return cells.getOrDefault(column, "");
    }
}
