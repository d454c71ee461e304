// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Finding;

/** What came of a table. */
public final class Report {
    /** Bad rows that are told one by one; the others are counted. */
    public static final int MOST_TOLD = 1000;

    private long rows;
    private long added;
    private long unchanged;
    private long replaced;
    private long badRows;
    private boolean kept;
    private long stoppedIn;
    private final List<Bad> bad = new ArrayList<>();

    /** @param line of the table, from 1 */
    public record Bad(long line, Finding finding) {}

    void row() {
        rows++;
    }

    void added() {
        added++;
    }

    void unchanged() {
        unchanged++;
    }

    void replaced() {
        replaced++;
    }

    void keep(boolean yes) {
        kept = yes;
    }

    void stop(long line) {
        stoppedIn = line;
    }

    void bad(long line, List<Finding> findings) {
        badRows++;
        for (Finding finding : findings) {
            if (bad.size() < MOST_TOLD) {
                bad.add(new Bad(line, finding));
            }
        }
    }

    /** Rows read, the head not counted. */
    public long rows() {
        return rows;
    }

    public long good() {
        return rows - badRows;
    }

    public long badRows() {
        return badRows;
    }

    /** Rows that told something new. */
    public long addedRows() {
        return added;
    }

    /** Rows that were there before, word for word. */
    public long unchangedRows() {
        return unchanged;
    }

    public long replacedRows() {
        return replaced;
    }

    /** Whether somebody stopped the reading before the end of the table. */
    public boolean isStopped() {
        return stoppedIn > 0;
    }

    /** The line in which the last row read began; 0 where the whole table was read. */
    public long stoppedIn() {
        return stoppedIn;
    }

    /** Whether what was good has been kept. */
    public boolean isKept() {
        return kept;
    }

    public List<Bad> bad() {
        return List.copyOf(bad);
    }
}
