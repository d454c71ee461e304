// SPDX-License-Identifier: Apache-2.0
package landfall.thread.callout;

import landfall.fault.Answer;
import landfall.fault.OutOfRange;
import landfall.thread.CallOut;
import landfall.thread.metric.MetricReader;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;
import landfall.thread.scan.Misread;
import landfall.thread.scan.Numerals;
import landfall.thread.unified.UnifiedReader;

/** Reads a call-out of any family, as people type it. */
public final class CallOuts {
    private static final int LONGEST = 200;

    private CallOuts() {}

    /** The call-out, or the refusal with its place and mend. */
    public static Answer<CallOut> read(String text) {
        Cursor c = new Cursor(text);
        try {
            c.blanks();
            if (c.atEnd() || text.length() > LONGEST) {
                throw c.refuse(0, c.atEnd() ? "is empty" : "is longer than any call-out", "");
            }
            return Answer.of(read(c));
        } catch (Misread misread) {
            return Answer.refused(Nearest.mend(text, misread).finding());
        } catch (OutOfRange impossible) {
            return Answer.refused(impossible.finding());
        }
    }

    private static CallOut read(Cursor c) {
        char first = c.peek();
        if (first == 'M' && !Cursor.isLetter(c.peek(1))) {
            c.skip();
            return MetricReader.read(c);
        }
        if (first == '#' || first == 'N' || Numerals.begins(c)) {
            return inch(c);
        }
        throw c.expected("a thread: M and a diameter, or an inch size and threads per inch");
    }

    private static CallOut inch(Cursor c) {
        InchHead head = InchHead.read(c);
        c.separators();
        return UnifiedReader.read(c, head);
    }
}
