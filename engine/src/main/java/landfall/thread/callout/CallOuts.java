// SPDX-License-Identifier: Apache-2.0
package landfall.thread.callout;

import java.util.Optional;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.thread.CallOut;
import landfall.thread.insert.InsertReader;
import landfall.thread.metric.MetricReader;
import landfall.thread.pipe.PipeReader;
import landfall.thread.power.AcmeReader;
import landfall.thread.power.TrapezoidalReader;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;
import landfall.thread.scan.Misread;
import landfall.thread.scan.Numerals;
import landfall.thread.unified.UnifiedReader;
import landfall.thread.whitworth.WhitworthReader;

/** Reads a call-out of any family, as people type it. */
public final class CallOuts {
    private static final int LONGEST = 200;

    private CallOuts() {}

    /** The call-out, or the refusal with its place and mend. */
    public static Answer<CallOut> read(String text) {
        return hear(text).map(Heard::callOut);
    }

    /** The call-out with what was taken for granted in reading it, or the refusal with its place and mend. */
    public static Answer<Heard> hear(String text) {
        try {
            Cursor c = new Cursor(text);
            c.blanks();
            if (c.atEnd() || text.length() > LONGEST) {
                throw c.refuse(0, c.atEnd() ? "is empty" : "is longer than any call-out", "");
            }
            return hear(text, c);
        } catch (Misread misread) {
            return Answer.refused(Nearest.mend(text, misread).finding());
        } catch (OutOfRange impossible) {
            return Answer.refused(impossible.finding());
        }
    }

    /** As it stands; where that cannot be read, without what a drawing writes around a thread. */
    private static Answer<Heard> hear(String text, Cursor c) {
        Misread failed;
        try {
            return Answer.of(new Heard(read(c), c.assumed()));
        } catch (Misread plain) {
            failed = plain;
        }
        for (DrawingNote note : DrawingNote.of(text)) {
            try {
                return Answer.of(hear(note, new Cursor(note.text(), text)));
            } catch (Misread closer) {
                failed = closer;
            }
        }
        throw failed;
    }

    private static Heard hear(DrawingNote note, Cursor c) {
        c.blanks();
        CallOut callOut = read(c);
        if (!note.aside().isEmpty()) {
            c.assume(aside(String.join(", ", note.aside())));
        }
        return new Heard(note.insert() ? InsertReader.of(c, 0, callOut) : callOut, c.assumed());
    }

    private static Caution aside(String words) {
        return new Caution(
                "setAside",
                "Set aside, as it is no part of the thread: " + words
                        + ". A depth is asked for by its own field where it counts.",
                words);
    }

    private static CallOut read(Cursor c) {
        char first = c.peek();
        if (first == '#' || Numerals.begins(c) || c.startsWith("NO.") || c.startsWith("NO ")) {
            return inch(c);
        }
        if (first == 'M' && (!Cursor.isLetter(c.peek(1)) || c.peek(1) == 'J')) {
            c.skip();
            return MetricReader.read(c);
        }
        return named(c);
    }

    /** The name stands first: {@code G 1/2}, {@code Tr40x7}, {@code STI M6x1}, {@code NPT 1/2}. */
    private static CallOut named(Cursor c) {
        if (c.takeWord("STI") || c.takeWord("EG")) {
            return InsertReader.read(c);
        }
        if (c.startsWith("TR") && !Cursor.isLetter(c.peek(2))) {
            c.skip();
            c.skip();
            return TrapezoidalReader.read(c);
        }
        if (c.takeWord("G")) {
            return PipeReader.parallel(c);
        }
        if (c.peek() == 'R' && (!Cursor.isLetter(c.peek(1)) || c.startsWith("RC") || c.startsWith("RP"))) {
            c.skip();
            return PipeReader.sealing(c);
        }
        if (c.startsWith("UN")) {
            return UnifiedReader.seriesFirst(c);
        }
        return family(c, Optional.empty())
                .orElseThrow(() -> c.expected("a thread, as in M8, 1/4-20 UNC, 1/2-14 NPT, G 1/2, Tr40x7, STI M6x1"));
    }

    private static CallOut inch(Cursor c) {
        int start = c.at();
        InchHead head = InchHead.read(c);
        c.separators();
        if (c.takeWord("STI")) {
            c.separators();
            return InsertReader.of(c, start, UnifiedReader.read(c, head));
        }
        return family(c, Optional.of(head)).orElseGet(() -> UnifiedReader.read(c, head));
    }

    /** The families that are named by a word of their own, after the size or before it. */
    private static Optional<CallOut> family(Cursor c, Optional<InchHead> head) {
        if (c.takeWord("NPTF")) {
            return Optional.of(PipeReader.american(c, head, true));
        }
        if (c.takeWord("NPT")) {
            return Optional.of(PipeReader.american(c, head, false));
        }
        for (String name : new String[] {"BSW", "BSF", "WHITWORTH", "WHIT"}) {
            if (c.takeWord(name)) {
                return Optional.of(WhitworthReader.whitworth(c, head, name.equals("WHITWORTH") ? "WHIT" : name));
            }
        }
        if (c.takeWord("BA")) {
            return Optional.of(WhitworthReader.ba(c, head));
        }
        if (c.takeWord("BSPP") || c.takeWord("PF")) {
            return Optional.of(PipeReader.bspp(c, head));
        }
        if (c.startsWith("BSP") || c.startsWith("PT") && !Cursor.isLetter(c.peek(2))) {
            throw PipeReader.twoThreads(c, head);
        }
        return head.isPresent() ? head.flatMap(size -> acme(c, size)) : acmeFirst(c);
    }

    private static Optional<CallOut> acmeFirst(Cursor c) {
        if (!c.takeWord("ACME")) {
            return Optional.empty();
        }
        c.separators();
        return Optional.of(AcmeReader.read(c, InchHead.read(c), false));
    }

    private static Optional<CallOut> acme(Cursor c, InchHead head) {
        if (c.takeWord("ACME")) {
            return Optional.of(AcmeReader.read(c, head, false));
        }
        if (!c.takeWord("STUB")) {
            return Optional.empty();
        }
        c.separators();
        c.takeWord("ACME");
        return Optional.of(AcmeReader.read(c, head, true));
    }
}
