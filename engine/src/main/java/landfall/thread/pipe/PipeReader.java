// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import landfall.fault.Caution;
import landfall.thread.CallOut;
import landfall.thread.Hand;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;
import landfall.thread.scan.Misread;
import landfall.thread.scan.Numerals;

/** Reads pipe call-outs: {@code G 1/2 A}, {@code Rc 1/2}, {@code 1/2-14 NPT}, {@code NPTF 1/4}. */
public final class PipeReader {
    private static final Caution BSPP = new Caution(
            "bsppIsG", "Read as G, the parallel pipe thread of ISO 228: it does not seal on the thread.", "BSPP");

    private PipeReader() {}

    /** On from the letter G. */
    public static CallOut parallel(Cursor c) {
        return graded(c, PipeSize.read(c));
    }

    private static CallOut graded(Cursor c, PipeSize size) {
        c.separators();
        Optional<GCallOut.Grade> grade = Optional.empty();
        if (c.takeWord("A")) {
            grade = Optional.of(GCallOut.Grade.A);
        } else if (c.takeWord("B")) {
            grade = Optional.of(GCallOut.Grade.B);
        }
        return new GCallOut(size, grade, end(c, "A, B, LH, or the end"));
    }

    /** BSP, BSPT or PT: a name of more than one thread. */
    public static Misread twoThreads(Cursor c, Optional<InchHead> before) {
        String name = c.startsWith("BSPT") ? "BSPT" : c.startsWith("PT") ? "PT" : "BSP";
        String size = before.map(head -> " " + Numerals.asFraction(head.size())).orElse("");
        String sealing = "Rc%s for a hole, R%s for a pipe end, Rp%s for a parallel hole that seals on the thread"
                .formatted(size, size, size);
        return c.refuse(
                c.at(),
                "has " + name + " at character " + (c.at() + 1) + ", which names more than one thread",
                "write " + (name.equals("BSP") ? "G%s for the parallel thread (BSPP), ".formatted(size) : "")
                        + sealing);
    }

    /**
     * On from BSPP, or PF of old Japanese drawings, the trade's name for G, whether the size stood before it or stands
     * after it.
     */
    public static CallOut bspp(Cursor c, Optional<InchHead> before) {
        if (before.isEmpty()) {
            c.assume(BSPP);
            return parallel(c);
        }
        InchHead head = before.get();
        String size = Numerals.asFraction(head.size());
        PipeSize pipe = PipeSize.of(head.size())
                .orElseThrow(() -> c.refuse(0, "has a size that G does not have", PipeSize.RUN));
        if (head.pitch() != 0 && head.pitch() != InchHead.pitchOf(pipe.threadsPerInch() * Numerals.ONE)) {
            throw c.refuse(0, "has threads an inch that this size does not have", "write G " + size);
        }
        c.assume(BSPP);
        return graded(c, pipe);
    }

    /** On from the letter R. */
    public static CallOut sealing(Cursor c) {
        RCallOut.Kind kind = c.take('C') ? RCallOut.Kind.RC : c.take('P') ? RCallOut.Kind.RP : RCallOut.Kind.R;
        int start = c.at();
        PipeSize size = PipeSize.read(c);
        if (!size.isTaperToo()) {
            throw c.refuse(start, "has a size that R, Rc and Rp do not have", "write G " + size.name());
        }
        return new RCallOut(size, kind, end(c, "LH or the end"));
    }

    /** On from NPT or NPTF, whether the size stood before it or stands after it. */
    public static CallOut american(Cursor c, Optional<InchHead> before, boolean dry) {
        InchHead head = before.orElseGet(() -> sizeAfter(c));
        NptSize size = NptSize.of(c, head);
        c.separators();
        int grade = 0;
        if (dry && (c.peek() == '1' || c.peek() == '2') && !Cursor.isDigit(c.peek(1))) {
            grade = c.peek() - '0';
            c.skip();
        }
        return new NptCallOut(size, dry, grade, end(c, "LH or the end"));
    }

    private static InchHead sizeAfter(Cursor c) {
        c.separators();
        return InchHead.read(c);
    }

    private static Hand end(Cursor c, String what) {
        c.separators();
        Hand hand = Hand.RIGHT;
        if (c.takeWord("LH")) {
            hand = Hand.LEFT;
            c.separators();
        }
        if (!c.atEnd()) {
            throw c.expected(what);
        }
        return hand;
    }

    /** Every pipe thread in its normal form. */
    public static List<String> callOuts() {
        return Stream.of(
                        PipeSize.all().stream().map(size -> "G " + size.name()),
                        PipeSize.all().stream().filter(PipeSize::isTaperToo).map(size -> "R " + size.name()),
                        PipeSize.all().stream().filter(PipeSize::isTaperToo).map(size -> "Rc " + size.name()),
                        PipeSize.all().stream().filter(PipeSize::isTaperToo).map(size -> "Rp " + size.name()),
                        NptSize.all().stream().map(size -> size.label() + " NPT"),
                        NptSize.all().stream().map(size -> size.label() + " NPTF"))
                .flatMap(each -> each)
                .toList();
    }
}
