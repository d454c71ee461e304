// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import java.util.function.LongConsumer;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.Store;

/** Reads a table into a crib. */
public final class TableIn {
    /** What a decoder puts where the bytes are not UTF-8. */
    private static final char NO_TEXT = '\uFFFD';

    private static final long TOLD_EVERY = 5000;

    private final Wish wish;
    private final Report report = new Report();
    private final LongConsumer progress;

    private TableIn(Wish wish, LongConsumer progress) {
        this.wish = wish;
        this.progress = progress;
    }

    /**
     * Reads to the end and keeps what the wish says, in one transaction.
     *
     * @param in decoded so that bytes which are not UTF-8 become the replacement sign
     * @param progress told the number of rows read, now and then
     */
    public static Answer<Report> read(Store store, Reader in, Wish wish, LongConsumer progress) {
        TableIn table = new TableIn(wish, progress);
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .fieldSeparator(',')
                .allowMissingFields(true)
                .allowExtraFields(true)
                .skipEmptyLines(true)
                .ofCsvRecord(in)) {
            return table.read(store, csv.iterator());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Answer<Report> read(Store store, Iterator<CsvRecord> rows) {
        Answer<Columns> head = head(rows);
        if (!(head instanceof Answer.Of<Columns> of)) {
            return Answer.refused(head.findings());
        }
        Columns columns = of.value();
        try {
            store.write(handle -> {
                RowTaker taker = columns.tellEvents() ? new EventTaker(handle, wish) : new ThingTaker(handle, wish);
                all(rows, columns, taker);
                if (wish.how().dry() || (wish.how().allOrNone() && report.badRows() > 0)) {
                    throw new KeepNothing();
                }
                return handle;
            });
            report.keep(true);
        } catch (KeepNothing e) {
            report.keep(false);
        }
        return Answer.of(report);
    }

    private Answer<Columns> head(Iterator<CsvRecord> rows) {
        try {
            if (!rows.hasNext()) {
                return Answer.refused(
                        new Finding("columns", "", "are missing: the file is empty", "begin with mark,thread,place"));
            }
            List<String> names = rows.next().getFields().stream()
                    .map(name -> name.replace("\uFEFF", ""))
                    .toList();
            return Columns.read(names, wish.columns());
        } catch (CsvParseException e) {
            return Answer.refused(broken(e, ""));
        }
    }

    private void all(Iterator<CsvRecord> rows, Columns columns, RowTaker taker) {
        long line = 1;
        try {
            while (rows.hasNext()) {
                CsvRecord row = rows.next();
                line = row.getStartingLineNumber();
                report.row();
                one(columns.line(line, row.getFields()), row, taker);
                if (report.rows() % TOLD_EVERY == 0) {
                    progress.accept(report.rows());
                }
            }
        } catch (CsvParseException e) {
            report.row();
            report.bad(line + 1, List.of(broken(e, "after line " + line)));
        }
        taker.end();
        progress.accept(report.rows());
    }

    private void one(Line line, CsvRecord row, RowTaker taker) {
        for (String cell : row.getFields()) {
            if (cell.indexOf(NO_TEXT) >= 0) {
                report.bad(
                        line.number(),
                        List.of(new Finding("line", cell, "is not text in UTF-8", "save the table as UTF-8")));
                return;
            }
        }
        List<Finding> findings = taker.take(line, report);
        if (!findings.isEmpty()) {
            report.bad(line.number(), findings);
        }
    }

    private static Finding broken(CsvParseException fault, String where) {
        return new Finding(
                "line",
                where,
                "cannot be read on: " + String.valueOf(fault.getMessage()).replaceFirst("\\s*\\(.*", ""),
                "look for a quotation mark that is not closed");
    }

    /** Takes rows of one shape. */
    interface RowTaker {
        /** What is wrong with the row; empty when it was taken. */
        List<Finding> take(Line line, Report report);

        /** After the last row. */
        void end();
    }

    /** Ends the transaction so that nothing of it stays. */
    private static final class KeepNothing extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }
}
