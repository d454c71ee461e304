// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

import landfall.thread.scan.Cursor;
import landfall.thread.scan.Misread;

/**
 * Reads a tolerance zone: {@code 6H}, {@code 5H6H}, {@code 6g}, {@code 4g6g}. Small letters are the external thread.
 */
final class ZoneReader {
    private ZoneReader() {}

    static Zone read(Cursor c) {
        int start = c.at();
        int pitchGrade = grade(c);
        char pitchPosition = position(c);
        int crestGrade = pitchGrade;
        char crestPosition = pitchPosition;
        if (c.atDigit()) {
            crestGrade = grade(c);
            crestPosition = position(c);
        }
        Zone zone = new Zone(pitchGrade, pitchPosition, crestGrade, crestPosition);
        judge(c, start, zone);
        return zone;
    }

    private static int grade(Cursor c) {
        if (!c.atDigit()) {
            throw c.expected("a tolerance grade 3 to 9");
        }
        int grade = c.peek() - '0';
        c.skip();
        return grade;
    }

    private static char position(Cursor c) {
        char letter = c.typed();
        if ("efghGH".indexOf(letter) < 0 || letter == Cursor.END) {
            throw c.expected("a position: e f g h outside, G H inside");
        }
        c.skip();
        return letter;
    }

    private static void judge(Cursor c, int start, Zone zone) {
        boolean inside = Character.isUpperCase(zone.pitchPosition());
        if (zone.pitchPosition() != zone.crestPosition()) {
            throw refuse(
                    c,
                    start,
                    "mixes the positions " + zone.pitchPosition() + " and " + zone.crestPosition(),
                    "use one letter for both diameters, as in 5H6H or 4g6g");
        }
        if (inside && (outside(zone.pitchGrade(), 4, 8) || outside(zone.crestGrade(), 4, 8))) {
            throw refuse(c, start, "has a grade that internal threads do not have (4 to 8)", "take 5H, 6H or 7H");
        }
        if (!inside && outside(zone.pitchGrade(), 3, 9)) {
            throw refuse(c, start, "has a grade that external threads do not have (3 to 9)", "take 4h, 6g or 8g");
        }
        if (!inside && zone.crestGrade() != 4 && zone.crestGrade() != 6 && zone.crestGrade() != 8) {
            String crest = zone.crestGrade() < 5 ? "4" : zone.crestGrade() < 8 ? "6" : "8";
            throw refuse(
                    c,
                    start,
                    "asks for grade " + zone.crestGrade() + " on the major diameter, which has 4, 6 and 8",
                    "write " + zone.pitchGrade() + zone.pitchPosition() + crest + zone.crestPosition());
        }
    }

    private static boolean outside(int grade, int least, int greatest) {
        return grade < least || grade > greatest;
    }

    private static Misread refuse(Cursor c, int start, String why, String mend) {
        return c.refuse(start, "has a class at character " + (start + 1) + " that " + why, mend);
    }
}
