// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import java.util.List;
import landfall.cards.words.Words;

/** Rows of what is due beside single taps, in the words and signs of a page. */
public final class DueView {
    private DueView() {}

    /** Marks that stand in one cell. */
    public static List<String> marks(String cell) {
        return cell.isEmpty() ? List.of() : List.of(cell.split(", "));
    }

    /** A full sign where the calibration is over, an open one where it is near its end. */
    public static String sign(List<String> gauge) {
        return isOver(gauge) ? "\u25a0" : "\u25b3";
    }

    /** How the calibration of a gauge stands. */
    public static String words(List<String> gauge) {
        long days = Math.abs(days(gauge));
        return isOver(gauge) ? Words.of("page.due-taps.gaugeOver", days) : Words.of("page.due-taps.gaugeNear", days);
    }

    private static boolean isOver(List<String> gauge) {
        return days(gauge) < 0;
    }

    private static long days(List<String> gauge) {
        return Long.parseLong(gauge.get(4).replace('\u2212', '-').replaceAll("[^0-9-]", ""));
    }
}
