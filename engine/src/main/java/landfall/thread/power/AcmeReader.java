// SPDX-License-Identifier: Apache-2.0
package landfall.thread.power;

import java.util.List;
import java.util.Optional;
import landfall.thread.Hand;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;
import landfall.thread.scan.Numerals;

/** Reads an Acme call-out on from its name: class, hand, starts. */
public final class AcmeReader {
    private static final long LARGEST = 20 * Numerals.ONE;

    private final Cursor c;
    private final InchHead head;
    private Optional<AcmeClass> fit = Optional.empty();
    private Hand hand = Hand.RIGHT;
    private int starts;

    private AcmeReader(Cursor c, InchHead head) {
        this.c = c;
        this.head = head;
    }

    public static AcmeCallOut read(Cursor c, InchHead head, boolean stub) {
        return new AcmeReader(c, head).read(stub);
    }

    private AcmeCallOut read(boolean stub) {
        if (head.pitch() == 0) {
            throw c.refuse(0, "has no threads per inch", "write them after a dash, as in 1/2-10 ACME-2G");
        }
        tail();
        if (stub && fit.isPresent() && fit.get() != AcmeClass.G2) {
            throw c.refuse(0, "has a class that stub Acme does not have", "write 2G or none");
        }
        if (head.size() > LARGEST
                || head.size() * 10 <= head.pitch() * 13
                || head.pitch() > Numerals.ONE
                || head.pitch() < Numerals.ONE / 100) {
            throw c.refuse(
                    0, "is outside Acme: to 20 in, 1 to 100 threads an inch", "check diameter and threads per inch");
        }
        return new AcmeCallOut(new AcmeSize(head.size(), head.pitch(), starts()), stub, fit, hand);
    }

    private int starts() {
        long lead = head.lead();
        int byLead = lead == 0 ? 0 : (int) Math.min(100, (lead + head.pitch() / 2) / head.pitch());
        if (lead != 0 && (byLead < 1 || Math.abs(lead - byLead * head.pitch()) > byLead * Numerals.ONE / 10_000)) {
            throw c.refuse(
                    0,
                    "has a lead that is not a whole number of pitches",
                    "write pitch and lead as in 1.0000-0.2P-0.4L");
        }
        int all = byLead != 0 ? byLead : Math.max(1, starts);
        if (all > 20 || starts != 0 && starts != all) {
            throw c.refuse(
                    0, "has starts that do not agree with pitch and lead", "lead = starts x pitch, 1 to 20 starts");
        }
        return all;
    }

    private void tail() {
        while (true) {
            while ("- ,;()".indexOf(c.peek()) >= 0 && !c.atEnd()) {
                c.skip();
            }
            if (c.atEnd()) {
                return;
            }
            if (c.takeWord("LH")) {
                hand = Hand.LEFT;
            } else if (c.atDigit() && c.peek(1) == 'G' && fit.isEmpty()) {
                fit = Optional.of(fit());
            } else if (c.atDigit() && c.peek(1) == 'C') {
                throw c.refuse(
                        c.at(),
                        "asks for a centralizing class at character " + (c.at() + 1) + ", whose limits are not held",
                        "take them from the drawing or the standard; a general purpose thread is 2G, 3G or 4G");
            } else if (c.atDigit()) {
                count();
            } else {
                throw c.expected("a class (2G, 3G, 4G), LH, or the end");
            }
        }
    }

    private AcmeClass fit() {
        for (AcmeClass each : AcmeClass.values()) {
            if (c.takeWord(each.code())) {
                return each;
            }
        }
        throw c.expected("a class: 2G, 3G, 4G");
    }

    private void count() {
        long value = Numerals.whole(c);
        c.blanks();
        if (!c.takeWord("STARTS") && !c.takeWord("START") || value < 1 || value > 20) {
            throw c.expected("a class (2G, 3G, 4G) or a number of starts, as in 2 STARTS");
        }
        starts = (int) value;
    }

    /** Every standard Acme thread in its normal form. */
    public static List<String> callOuts() {
        return AcmeSize.standard().stream().map(size -> size.label() + " ACME").toList();
    }
}
