// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import java.time.ZonedDateTime;
import java.util.Map;
import landfall.fault.Finding;

/**
 * How a table is to be read.
 *
 * @param columns what the table's columns are called here, where their names differ
 * @param how what to do with the rows
 * @param by who says so, where the table does not
 * @param now the moment of reading, with the place's clock
 * @param bad told every finding, however many there are
 */
public record Wish(Map<String, String> columns, How how, String by, ZonedDateTime now, Bad bad) {
    /** Takes what is wrong with the rows as they come. */
    public interface Bad {
        /** Lets it go: the report tells the first ones. */
        Bad REPORT_ALONE = (line, finding) -> {};

        /** @param line of the table, from 1 */
        void accept(long line, Finding finding);
    }

    public Wish(Map<String, String> columns, How how, String by, ZonedDateTime now) {
        this(columns, how, by, now, Bad.REPORT_ALONE);
    }

    public Wish {
        columns = Map.copyOf(columns);
    }

    /**
     * @param dry read and judge, keep nothing
     * @param allOrNone keep nothing when one row is bad
     * @param replace a card of a mark that is there takes the place of the old one
     */
    public record How(boolean dry, boolean allOrNone, boolean replace) {}
}
