// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import java.util.Optional;
import landfall.thread.Hand;
import landfall.thread.Side;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;
import landfall.thread.scan.Misread;
import landfall.thread.scan.Numerals;
import landfall.thread.unified.UnifiedCallOut.Fit;
import landfall.thread.unified.UnifiedCallOut.Form;
import landfall.thread.unified.UnifiedCallOut.Note;

/** Reads a Unified call-out on from its size and pitch: series, class, hand, starts, engagement, gauging system. */
public final class UnifiedReader {
    private static final long FINEST = Numerals.ONE / 100;
    private static final long COARSEST = Numerals.ONE / 2;
    private static final long SMALLEST = Numerals.ONE / 20;
    private static final long LARGEST = 24 * Numerals.ONE;
    private static final String SERIES = "a series (UNC, UNF, UNEF, UN, UNS) or a class such as 2B";

    private final Cursor c;
    private final InchHead head;
    private int starts;
    private long lead;
    private Optional<UnifiedClass> external = Optional.empty();
    private Optional<UnifiedClass> internal = Optional.empty();
    private Hand hand = Hand.RIGHT;
    private boolean handRead;
    private long engagement;
    private int gaugingSystem;

    private UnifiedReader(Cursor c, InchHead head) {
        this.c = c;
        this.head = head;
        this.lead = head.lead();
    }

    /** Reads to the end of the text, or throws {@link Misread}. */
    public static UnifiedCallOut read(Cursor c, InchHead head) {
        try {
            return new UnifiedReader(c, head).read();
        } catch (Misread misread) {
            throw misread.orMendedBy(UnifiedPairs.mend(head));
        }
    }

    /** The same where the series stands before the size: {@code UNC 1/4-20 2B}. */
    public static UnifiedCallOut seriesFirst(Cursor c) {
        int seriesAt = c.at();
        Root root = root(c);
        Series series = series(c);
        c.separators();
        InchHead head = InchHead.read(c);
        try {
            return new UnifiedReader(c, head).on(seriesAt, root, Optional.of(series));
        } catch (Misread misread) {
            throw misread.orMendedBy(UnifiedPairs.mend(head));
        }
    }

    private UnifiedCallOut read() {
        int seriesAt = c.at();
        boolean named = Cursor.isLetter(c.peek()) && !c.startsWith("LH") && !c.startsWith("LE") && !c.startsWith("RH");
        if (!named || head.pitch() == 0) {
            return on(seriesAt, Root.FREE, Optional.empty());
        }
        Root root = root(c);
        return on(seriesAt, root, Optional.of(series(c)));
    }

    private static Root root(Cursor c) {
        return c.startsWith("UNR") ? Root.ROUNDED : c.startsWith("UNJ") ? Root.CONTROLLED : Root.FREE;
    }

    /** On from the series, wherever it stood. */
    private UnifiedCallOut on(int seriesAt, Root root, Optional<Series> named) {
        if (head.pitch() == 0) {
            throw c.expected("a dash and the threads per inch, as in 1/4-20");
        }
        tail();
        UnifiedSize size = UnifiedSize.of(head, starts());
        judgeRange(size);
        Series series = named.orElseGet(() -> usual(size));
        if (series == Series.UN && size.starts() == 1 && usual(size) != Series.UN) {
            series = usual(size);
            c.assume(Assumed.family(size, series));
        }
        UnifiedPairs.judge(c, seriesAt, size, series, engagement != 0);
        return new UnifiedCallOut(
                size, new Form(series, root), new Fit(external, internal), hand, new Note(engagement, gaugingSystem));
    }

    private static Series usual(UnifiedSize size) {
        return size.starts() > 1 ? Series.UNS : Series.of(size).orElse(Series.UNS);
    }

    /** UNC, UNRC, and the old American National NC, which has the same basic sizes. */
    private static Series series(Cursor c) {
        int start = c.at();
        boolean national = c.peek() == 'N';
        if (c.take('U') && !c.take('N') || c.at() == start && !c.take('N')) {
            c.to(start);
            throw c.expected(SERIES);
        }
        if (!c.take('R')) {
            c.take('J');
        }
        Series series = Series.UN;
        if (c.take('C')) {
            series = Series.UNC;
        } else if (c.take('F')) {
            series = Series.UNF;
        } else if (c.take('S')) {
            series = Series.UNS;
        } else if (c.take('E') && c.take('F')) {
            series = Series.UNEF;
        }
        if (Cursor.isLetter(c.peek())) {
            c.to(start);
            throw c.expected(SERIES);
        }
        if (national) {
            c.assume(Assumed.oldSeries(series));
        }
        return series;
    }

    private void hand(Hand read, int place) {
        if (handRead) {
            throw c.refuse(
                    place,
                    "names the hand twice",
                    "write LH once for a left-hand thread, nothing for a right-hand one");
        }
        handRead = true;
        hand = read;
    }

    private void tail() {
        while (true) {
            while ("- ,;()".indexOf(c.peek()) >= 0 && !c.atEnd()) {
                c.skip();
            }
            if (c.atEnd()) {
                return;
            }
            int place = c.at();
            if (c.takeWord("LH") || c.takeWord("LEFT")) {
                hand(Hand.LEFT, place);
                skipWord("HAND");
            } else if (c.takeWord("RH")) {
                hand(Hand.RIGHT, place);
            } else if (c.takeWord("LE")) {
                engagement();
            } else if (Numerals.begins(c)) {
                figure();
            } else {
                throw c.expected("a class such as 2B, LH, LE with a length, or the end");
            }
        }
    }

    private void skipWord(String word) {
        int place = c.at();
        c.separators();
        if (!c.takeWord(word)) {
            c.to(place);
        }
    }

    private void engagement() {
        c.blanks();
        c.take('=');
        c.blanks();
        int place = c.at();
        engagement = Numerals.mixed(c);
        if (engagement <= 0 || engagement > LARGEST) {
            throw c.refuse(
                    place,
                    "has a length of engagement at character " + (place + 1) + " that is not over 0 and up to 24 in",
                    "give the length in inches, as in LE 0.5");
        }
        if (!c.take('"')) {
            skipWord("IN");
        }
    }

    /** A class, a gauging system, a number of starts or a lead: told apart by what follows the number. */
    private void figure() {
        int place = c.at();
        Optional<UnifiedClass> fit = UnifiedClass.of(c.peek(), c.peek(1));
        if (fit.isPresent() && !Cursor.isLetter(c.peek(2))) {
            c.skip();
            c.skip();
            take(fit.get(), place);
            return;
        }
        boolean alone = " -,;()\0".indexOf(c.peek(1)) >= 0;
        long value = Numerals.decimal(c);
        c.separators();
        if (c.takeWord("STARTS") || c.takeWord("START")) {
            starts = value % Numerals.ONE == 0 && value <= 20 * Numerals.ONE ? (int) (value / Numerals.ONE) : -1;
        } else if (c.peek() == 'L' && !c.startsWith("LH") && !c.startsWith("LE")) {
            c.skip();
            lead = value;
        } else if (value >= 21 * Numerals.ONE && value <= 23 * Numerals.ONE && value % Numerals.ONE == 0) {
            gaugingSystem = (int) (value / Numerals.ONE);
        } else if (alone && value >= Numerals.ONE && value <= 3 * Numerals.ONE) {
            withoutLetter((char) ('0' + value / Numerals.ONE), place);
        } else {
            c.to(place);
            throw c.expected("a class: 1A, 2A, 3A outside, 1B, 2B, 3B inside");
        }
    }

    private void withoutLetter(char digit, int place) {
        take(UnifiedClass.of(digit, 'A').orElseThrow(), place);
        take(UnifiedClass.of(digit, 'B').orElseThrow(), place);
        c.assume(Assumed.noLetter(digit));
    }

    private void take(UnifiedClass fit, int place) {
        boolean outside = fit.side() == Side.EXTERNAL;
        if (outside ? external.isPresent() : internal.isPresent()) {
            throw c.refuse(
                    place,
                    "names a second class for the same side at character " + (place + 1),
                    "give one class, or a pair such as 2A/2B");
        }
        if (outside) {
            external = Optional.of(fit);
        } else {
            internal = Optional.of(fit);
        }
        c.take('/');
    }

    /** From the lead where one is given; what the text says of starts must agree. */
    private int starts() {
        int byLead = 0;
        if (lead != 0) {
            byLead = (int) Math.min(100, (lead + head.pitch() / 2) / head.pitch());
            if (byLead < 1 || Math.abs(lead - byLead * head.pitch()) > byLead * InchGrain.PLACES_4) {
                throw c.refuse(
                        0,
                        "has a lead that is not a whole number of pitches",
                        "give pitch and lead as in 0.2500-0.05P-0.1L");
            }
        }
        int all = byLead == 0 ? Math.max(starts, starts == 0 ? 1 : starts) : byLead;
        if (all < 1 || all > 20 || starts != 0 && starts != all) {
            throw c.refuse(
                    0, "has starts that do not agree with pitch and lead", "lead = starts x pitch, 1 to 20 starts");
        }
        return all;
    }

    private void judgeRange(UnifiedSize size) {
        if (size.pitch() < FINEST || size.pitch() > COARSEST || size.major() < SMALLEST || size.major() > LARGEST) {
            throw c.refuse(
                    0,
                    "is outside 0.05 to 24 in diameter and 2 to 100 threads an inch",
                    "check the diameter and the threads per inch");
        }
        if (size.major() <= size.pitch() * 13 / 10) {
            throw c.refuse(
                    0,
                    "has a diameter less than its own thread depth",
                    "check that diameter and threads per inch were not swapped");
        }
    }
}
