// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.nio.file.Path;
import landfall.fault.Finding;

/** What is wrong with the rows of a table, as a table. */
public final class FindingsOut implements AutoCloseable {
    private final CsvWriter csv;

    private FindingsOut(CsvWriter csv) {
        this.csv = csv;
        csv.writeRecord("line", "field", "given", "why", "mend");
    }

    public static FindingsOut to(Path file) throws IOException {
        return new FindingsOut(CsvWriter.builder().build(file));
    }

    /** @param line of the table that was read, from 1 */
    public void put(long line, Finding finding) {
        csv.writeRecord(
                String.valueOf(line),
                Cell.write(finding.field()),
                Cell.write(finding.given()),
                Cell.write(finding.why()),
                Cell.write(finding.mend()));
    }

    @Override
    public void close() throws IOException {
        csv.close();
    }
}
