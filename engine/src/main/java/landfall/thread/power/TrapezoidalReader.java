// SPDX-License-Identifier: Apache-2.0
package landfall.thread.power;

import java.util.List;
import landfall.thread.Hand;
import landfall.thread.power.TrapezoidalCallOut.Fit;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.Numerals;

/** Reads a trapezoidal call-out on from Tr: {@code 40x7-7e}, {@code 40x14(P7)LH-7H}, {@code 40x14P7-7H/7e-LH}. */
public final class TrapezoidalReader {
    private static final int LEAST = 60_000;
    private static final int LARGEST = 3_550_000;

    private final Cursor c;
    private int internal;
    private int external;
    private char position = 'e';
    private Hand hand = Hand.RIGHT;

    private TrapezoidalReader(Cursor c) {
        this.c = c;
    }

    public static TrapezoidalCallOut read(Cursor c) {
        return new TrapezoidalReader(c).read();
    }

    private TrapezoidalCallOut read() {
        c.blanks();
        int diameter = mm();
        c.blanks();
        if (!c.take('X')) {
            throw c.expected("x and the pitch, as in Tr40x7");
        }
        c.blanks();
        int first = mm();
        c.blanks();
        boolean bracket = c.take('(');
        int pitch = first;
        if (c.take('P')) {
            pitch = mm();
        }
        if (bracket && !c.take(')')) {
            throw c.expected("P, the pitch and a closing bracket, as in (P7)");
        }
        judge(diameter, first, pitch);
        tail();
        TrapezoidalSize size = new TrapezoidalSize(diameter, pitch, first / pitch);
        if (position == 'c' && !TrapezoidalTolerances.holdsC(size.P())) {
            throw c.refuse(0, "asks for position c at a pitch for which it is not held", "take position e, as in 7e");
        }
        return new TrapezoidalCallOut(size, new Fit(internal, external, position), hand);
    }

    private int mm() {
        int place = c.at();
        long value = Numerals.decimal(c, true);
        if (value % TrapezoidalSize.UNIT != 0 || value / TrapezoidalSize.UNIT > 10 * LARGEST) {
            throw c.refuse(
                    place,
                    "has a length at character " + (place + 1) + " that is not in steps of 0.0001 mm",
                    "round the figure");
        }
        return (int) (value / TrapezoidalSize.UNIT);
    }

    private void judge(int diameter, int lead, int pitch) {
        if (diameter < LEAST || diameter > LARGEST || pitch < 15_000 || pitch > 440_000 || diameter <= pitch * 1.3) {
            throw c.refuse(
                    0,
                    "is outside trapezoidal threads: 6 to 355 mm, pitch 1.5 to 44 mm and under 3/4 of the diameter",
                    "check that diameter and pitch were not swapped");
        }
        if (lead % pitch != 0 || lead / pitch > 20) {
            throw c.refuse(
                    0, "has a lead that is not 1 to 20 whole pitches", "lead = starts x pitch, as in Tr40x14(P7)");
        }
    }

    private void tail() {
        while (true) {
            while ("- /".indexOf(c.peek()) >= 0 && !c.atEnd()) {
                c.skip();
            }
            if (c.atEnd()) {
                return;
            }
            if (c.takeWord("LH")) {
                hand = Hand.LEFT;
            } else if (c.peek() >= '7' && c.peek() <= '9') {
                zone();
            } else {
                throw c.expected("a class (7H, 8H, 9H inside, 7e, 8e, 8c, 9c outside), LH, or the end");
            }
        }
    }

    private void zone() {
        int grade = c.peek() - '0';
        c.skip();
        char letter = c.typed();
        if (letter == 'H' && internal == 0) {
            internal = grade;
        } else if ((letter == 'e' || letter == 'c') && external == 0) {
            external = grade;
            position = letter;
        } else {
            throw c.expected("H inside, or e or c outside, once each");
        }
        c.skip();
    }

    /** Every first-choice trapezoidal thread in its normal form. */
    public static List<String> callOuts() {
        return TrapezoidalSize.standard().stream().map(TrapezoidalSize::label).toList();
    }
}
