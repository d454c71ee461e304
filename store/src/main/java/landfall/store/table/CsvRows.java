// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rows of a table with commas between the cells and quotation marks round them where needed (RFC 4180), whatever ends
 * its lines. A row that cannot be read is told and passed over: reading goes on with the line after the one it began
 * in, so that a quotation mark that is never closed costs one row and not the rest of the table. Takes the memory of
 * one row.
 */
final class CsvRows {
    /** Characters of the longest row that is taken. */
    static final int LONGEST = 1 << 16;

    /** Characters of a row that cannot be read by which it is known again. */
    private static final int SHOWN = 60;

    private static final int END = -1;

    private final Reader in;
    private char[] buffer = new char[1 << 14];
    private int filled;
    private int start;
    private int at;
    private boolean ended;
    private long line = 1;

    /**
     * One row.
     *
     * @param line that it begins in, from 1
     * @param fault why it cannot be read; null where it can
     */
    record Row(long line, List<String> cells, @Nullable String fault) {}

    CsvRows(Reader in) {
        this.in = in;
    }

    /** The next row that is not empty; null after the last. */
    @Nullable
    Row next() {
        while (true) {
            start = at;
            if (peek() == END) {
                return null;
            }
            long begins = line;
            if (isLineEnd(peek())) {
                endLine();
                continue;
            }
            List<String> cells = new ArrayList<>();
            String fault = cells(cells);
            if (fault == null) {
                return new Row(begins, cells, null);
            }
            String given = new String(buffer, start, Math.min(at - start, SHOWN));
            passOver(begins);
            return new Row(begins, List.of(given), fault);
        }
    }

    /** Why the row cannot be read; null where all its cells were. */
    private @Nullable String cells(List<String> cells) {
        while (true) {
            String fault = peek() == '"' ? quoted(cells) : plain(cells);
            if (fault != null) {
                return fault;
            }
            int next = peek();
            if (next == ',') {
                at++;
            } else {
                if (next != END) {
                    endLine();
                }
                return null;
            }
        }
    }

    private @Nullable String plain(List<String> cells) {
        int from = at - start;
        while (true) {
            int next = peek();
            if (next == END || next == ',' || isLineEnd(next)) {
                cells.add(new String(buffer, start + from, at - start - from));
                return null;
            }
            if (at - start >= LONGEST) {
                return "is longer than " + LONGEST + " characters";
            }
            at++;
        }
    }

    private @Nullable String quoted(List<String> cells) {
        StringBuilder cell = new StringBuilder();
        at++;
        while (true) {
            int next = peek();
            if (next == END) {
                return "has a quotation mark that is not closed";
            }
            if (at - start >= LONGEST) {
                return "has a quotation mark that is not closed, or is longer than " + LONGEST + " characters";
            }
            if (isLineEnd(next)) {
                cell.append('\n');
                endLine();
                continue;
            }
            at++;
            if (next != '"') {
                cell.append((char) next);
            } else if (peek() == '"') {
                cell.append('"');
                at++;
            } else {
                break;
            }
        }
        int next = peek();
        if (next != END && next != ',' && !isLineEnd(next)) {
            return "has text after a closing quotation mark";
        }
        cells.add(cell.toString());
        return null;
    }

    /** Goes on with the line after the one in which the row began. */
    private void passOver(long begins) {
        at = start;
        line = begins;
        while (peek() != END && !isLineEnd(peek())) {
            start = ++at;
        }
        if (peek() != END) {
            endLine();
        }
    }

    private static boolean isLineEnd(int character) {
        return character == '\n' || character == '\r';
    }

    private void endLine() {
        int first = peek();
        at++;
        if (first == '\r' && peek() == '\n') {
            at++;
        }
        line++;
    }

    private int peek() {
        if (at == filled) {
            fill();
        }
        return at == filled ? END : buffer[at];
    }

    private void fill() {
        if (ended) {
            return;
        }
        if (start > 0) {
            System.arraycopy(buffer, start, buffer, 0, filled - start);
            filled -= start;
            at -= start;
            start = 0;
        }
        if (filled == buffer.length) {
            buffer = Arrays.copyOf(buffer, buffer.length * 2);
        }
        try {
            int read = in.read(buffer, filled, buffer.length - filled);
            if (read < 0) {
                ended = true;
            } else {
                filled += read;
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
