// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

/** A coordinate as it is written: rounded to 0.01, no trailing zeros, no minus zero, whatever the locale. */
final class Coordinate {
    private Coordinate() {}

    static String text(double value) {
        long hundredths = Math.round(value * 100);
        long whole = Math.abs(hundredths) / 100;
        long rest = Math.abs(hundredths) % 100;
        StringBuilder text = new StringBuilder(8);
        if (hundredths < 0) {
            text.append('-');
        }
        text.append(whole);
        if (rest != 0) {
            text.append('.').append(rest / 10);
            if (rest % 10 != 0) {
                text.append(rest % 10);
            }
        }
        return text.toString();
    }

    static String text(Spot spot) {
        return text(spot.x()) + " " + text(spot.y());
    }
}
