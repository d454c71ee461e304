// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

import java.util.List;
import java.util.Optional;
import landfall.thread.Hand;
import landfall.thread.Side;
import landfall.thread.metric.MetricCallOut.Fit;
import landfall.thread.metric.MetricCallOut.Form;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.Misread;
import landfall.thread.scan.Numerals;

/** Reads a metric call-out on from its M: diameter, pitch or lead and pitch, zones, engagement, hand. */
public final class MetricReader {
    private static final int LARGEST = 355 * PitchIndex.UNITS_PER_MM;
    private static final int LEAST_PITCH = 2000;
    private static final int GREATEST_PITCH = 80000;
    private static final long UNIT = Numerals.ONE / PitchIndex.UNITS_PER_MM;

    private final Cursor c;
    private Optional<Zone> internal = Optional.empty();
    private Optional<Zone> external = Optional.empty();
    private int length;
    private Engagement.Group group = Engagement.Group.N;
    private Hand hand = Hand.RIGHT;
    private boolean handRead;

    private MetricReader(Cursor c) {
        this.c = c;
    }

    /** Reads to the end of the text, or throws {@link Misread}. */
    public static MetricCallOut read(Cursor c) {
        return new MetricReader(c).read();
    }

    private MetricCallOut read() {
        Form form = c.take('J') ? Form.MJ : Form.M;
        c.blanks();
        int at = c.at();
        int diameter = mm(at);
        if (diameter < PitchIndex.UNITS_PER_MM || diameter > LARGEST) {
            throw c.refuse(
                    at,
                    "has a diameter at character " + (at + 1) + " that is not from 1 to 355 mm",
                    "check the diameter; it is in millimetres");
        }
        MetricSize size = pitch(diameter);
        try {
            tail(size);
        } catch (Misread misread) {
            throw misread.orMendedBy("write " + size.label() + "-6H or " + size.label() + "-6g");
        }
        Engagement engagement = length > 0 ? Engagement.of(length, size) : new Engagement(group, 0);
        return new MetricCallOut(form, size, new Fit(internal, external), engagement, hand);
    }

    /** A length in 1e-4 mm. */
    private int mm(int place) {
        long value = Numerals.decimal(c, true);
        if (value % UNIT != 0 || value / UNIT > 10 * LARGEST) {
            throw c.refuse(
                    place,
                    "has a length at character " + (place + 1) + " that is not in steps of 0.0001 mm",
                    "round the figure");
        }
        return (int) (value / UNIT);
    }

    private MetricSize pitch(int diameter) {
        int place = c.at();
        c.blanks();
        if (!c.take('X')) {
            c.to(place);
            int coarse = MetricSize.coarsePitch(diameter).orElseThrow(() -> noCoarse(diameter, place));
            return new MetricSize(diameter, coarse, 1);
        }
        c.blanks();
        boolean byLead = lead();
        int at = c.at();
        int first = mm(at);
        if (byLead) {
            c.separators();
        } else {
            c.blanks();
        }
        boolean bracket = c.peek() == '(' && c.peek(1) == 'P';
        if (bracket) {
            c.skip();
        }
        if (byLead || bracket || c.peek() == 'P') {
            if (!c.take('P')) {
                throw c.expected("the pitch after the lead, as in Ph3P1.5");
            }
            int pitch = mm(c.at());
            if (bracket && !c.take(')')) {
                throw c.expected("a closing bracket");
            }
            return new MetricSize(diameter, judged(diameter, pitch, at), starts(first, pitch, at));
        }
        return new MetricSize(diameter, judged(diameter, first, at), 1);
    }

    /** The lead's own letters: Ph, or the L of older notes, as in {@code M20 x L4-P2}. */
    private boolean lead() {
        if (c.startsWith("PH")) {
            c.skip();
            c.skip();
            return true;
        }
        return c.take('L');
    }

    private int starts(int lead, int pitch, int at) {
        if (lead % pitch != 0 || lead / pitch > 20 || lead == 0) {
            throw c.refuse(
                    at,
                    "has a lead at character " + (at + 1) + " that is not 1 to 20 whole pitches",
                    "lead = starts x pitch, as in M16xPh3P1.5");
        }
        return lead / pitch;
    }

    private int judged(int diameter, int pitch, int at) {
        if (pitch < LEAST_PITCH || pitch > GREATEST_PITCH || diameter * 10L <= pitch * 13L) {
            throw c.refuse(
                    at,
                    "has a pitch at character " + (at + 1) + " that is not from 0.2 to 8 mm and under "
                            + "three quarters of the diameter",
                    "write one of " + near(diameter));
        }
        return pitch;
    }

    private Misread noCoarse(int diameter, int place) {
        return c.refuse(
                place,
                "has no pitch, and M" + MetricSize.mm(diameter) + " has no coarse one",
                "give the pitch, or take one of " + near(diameter));
    }

    private static String near(int diameter) {
        List<MetricSize> sizes = MetricSize.nearest(diameter);
        return String.join(", ", sizes.stream().limit(4).map(MetricSize::label).toList());
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

    private void tail(MetricSize size) {
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
                c.separators();
                c.takeWord("HAND");
            } else if (c.takeWord("RH")) {
                hand(Hand.RIGHT, place);
            } else if (c.takeWord("S")) {
                group = Engagement.Group.S;
            } else if (c.takeWord("N")) {
                group = Engagement.Group.N;
            } else if (c.takeWord("L")) {
                group = Engagement.Group.L;
            } else if (startsInWords(size, place)) {
                c.blanks();
            } else if (c.takeWord("FINE")) {
                fine(size, place);
            } else if (c.atDigit()) {
                figure(size);
            } else {
                throw c.expected("a class such as 6H or 6g, S, L, a length of engagement, LH, or the end");
            }
        }
    }

    /** TWO STARTS and the like, which must agree with lead and pitch. */
    private boolean startsInWords(MetricSize size, int place) {
        List<String> counts = List.of("ONE", "TWO", "THREE", "FOUR", "FIVE", "SIX");
        for (int i = 0; i < counts.size(); i++) {
            if (c.takeWord(counts.get(i)) || i == 1 && c.takeWord("DOUBLE")) {
                c.separators();
                if (!c.takeWord("STARTS") && !c.takeWord("START")) {
                    throw c.expected("START or STARTS");
                }
                agree(size, i + 1, place);
                return true;
            }
        }
        return false;
    }

    private void agree(MetricSize size, int starts, int place) {
        if (starts != size.starts()) {
            throw c.refuse(
                    place,
                    "says %d starts at character %d, but its pitch and lead say %d"
                            .formatted(starts, place + 1, size.starts()),
                    "write " + new MetricSize(size.diameter(), size.pitch(), Math.max(1, starts)).label());
        }
    }

    /** FINE beside a fine pitch says nothing new; alone it leaves the pitch open. */
    private void fine(MetricSize size, int place) {
        boolean coarse = MetricSize.coarsePitch(size.diameter()).orElse(0) == size.pitch();
        List<String> finer = MetricSize.nearest(size.diameter()).stream()
                .filter(each -> each.pitch() < size.pitch())
                .map(MetricSize::label)
                .toList();
        if (coarse && !finer.isEmpty()) {
            throw c.refuse(
                    place,
                    "says FINE at character " + (place + 1) + " but gives no fine pitch",
                    "write " + String.join(" or ", finer));
        }
    }

    private void figure(MetricSize size) {
        int place = c.at();
        if (Character.isLetter(c.peek(1)) && !c.startsWith("MM")) {
            Zone zone = ZoneReader.read(c);
            take(zone, place);
            if (c.peek() == 'X' && !Cursor.isLetter(c.peek(1))) {
                throw c.refuse(
                        place,
                        "has a tap maker's mark at character " + (place + 1) + ", which is no class of a thread",
                        "write " + zone.code() + "; the X belongs to the tap, whose own limits must be taken from it");
            }
            if (c.take('/')) {
                int second = c.at();
                take(ZoneReader.read(c), second);
            }
            return;
        }
        int value = mm(place);
        c.blanks();
        if (c.takeWord("STARTS") || c.takeWord("START")) {
            agree(size, value / PitchIndex.UNITS_PER_MM, place);
            return;
        }
        length = value;
        c.takeWord("MM");
        if (length == 0) {
            throw c.refuse(place, "has a length of engagement of nothing at character " + (place + 1), "leave it out");
        }
    }

    private void take(Zone zone, int place) {
        boolean inside = zone.side() == Side.INTERNAL;
        if (inside ? internal.isPresent() : external.isPresent()) {
            throw c.refuse(
                    place,
                    "names a second class for the same side at character " + (place + 1),
                    "give one class, or a fit such as 6H/6g");
        }
        if (inside) {
            internal = Optional.of(zone);
        } else {
            external = Optional.of(zone);
        }
    }
}
