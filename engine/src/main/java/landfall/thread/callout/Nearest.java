// SPDX-License-Identifier: Apache-2.0
package landfall.thread.callout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import landfall.thread.metric.MetricSize;
import landfall.thread.pipe.PipeReader;
import landfall.thread.power.AcmeReader;
import landfall.thread.power.TrapezoidalReader;
import landfall.thread.scan.Misread;
import landfall.thread.unified.UnifiedPairs;
import landfall.thread.whitworth.WhitworthReader;

/** The standard call-outs nearest to a text that is none: fewest letters to put in, change or strike out. */
final class Nearest {
    private static final int SHOWN = 3;
    private static final int LONGEST = 24;
    /** To put in what the writer left out is likelier than that he wrote something else. */
    private static final int PUT_IN = 2;

    private static final int ANOTHER_DIGIT = 6;
    private static final int CHANGE = 5;
    private static final int STRIKE_OUT = 3;

    /** A common beginning says more than what follows. */
    private static final int BEGINS_ALIKE = 8;

    private static final List<Right> STANDARD =
            standard().stream().map(each -> new Right(each, plain(each))).toList();

    private record Right(String callOut, String plain) {}

    private Nearest() {}

    static List<String> standard() {
        List<String> all = new ArrayList<>();
        all.add("M8x1.25-6H");
        all.add("1/4-20 UNC-2B");
        MetricSize.standard().forEach(size -> all.add(size.label()));
        all.addAll(UnifiedPairs.callOuts());
        all.addAll(PipeReader.callOuts());
        all.addAll(WhitworthReader.callOuts());
        all.addAll(AcmeReader.callOuts());
        all.addAll(TrapezoidalReader.callOuts());
        all.add("STI M6x1-5H");
        all.add("STI 1/4-20 UNC-2B");
        return List.copyOf(all);
    }

    /**
     * The misreading with a mend: the reader's own where it knew one, none where nothing in the text could be a size.
     */
    static Misread mend(String text, Misread misread) {
        boolean hasNumber = text.chars().anyMatch(c -> c >= '0' && c <= '9');
        return misread.mend().isEmpty() && hasNumber
                ? misread.mendedBy("write " + String.join(" or ", to(text)))
                : misread;
    }

    static List<String> to(String text) {
        String typed = plain(text.length() > LONGEST ? text.substring(0, LONGEST) : text);
        String wanted = typed.matches("\\d{2,3}") ? "M" + typed : typed;
        return STANDARD.stream()
                .sorted(Comparator.comparingInt(each -> distance(wanted, each.plain) - alike(wanted, each.plain)))
                .limit(SHOWN)
                .map(Right::callOut)
                .toList();
    }

    /** Number by number: 8 is no beginning of 80. */
    private static int alike(String wrong, String right) {
        int n = 0;
        while (n < Math.min(wrong.length(), right.length()) && wrong.charAt(n) == right.charAt(n)) {
            n++;
        }
        while (n > 0 && isDigit(right, n - 1) && (isDigit(right, n) || isDigit(wrong, n))) {
            n--;
        }
        return n * BEGINS_ALIKE;
    }

    private static String plain(String text) {
        return text.strip().toUpperCase(Locale.ROOT).replace(" ", "").replace('\u00d7', 'X');
    }

    /** A digit more in a number makes another size of it. */
    private static int putIn(String right, int at) {
        return isDigit(right, at) && (isDigit(right, at - 1) || isDigit(right, at + 1)) ? ANOTHER_DIGIT : PUT_IN;
    }

    private static boolean isDigit(String text, int at) {
        return at >= 0 && at < text.length() && Character.isDigit(text.charAt(at));
    }

    /** Least cost to make the right text from the wrong one. */
    private static int distance(String wrong, String right) {
        int[] row = new int[right.length() + 1];
        for (int j = 1; j <= right.length(); j++) {
            row[j] = row[j - 1] + putIn(right, j - 1);
        }
        for (int i = 1; i <= wrong.length(); i++) {
            int corner = row[0];
            row[0] = i * STRIKE_OUT;
            for (int j = 1; j <= right.length(); j++) {
                int change = corner + (wrong.charAt(i - 1) == right.charAt(j - 1) ? 0 : CHANGE);
                corner = row[j];
                row[j] = Math.min(change, Math.min(row[j] + STRIKE_OUT, row[j - 1] + putIn(right, j - 1)));
            }
        }
        return row[right.length()];
    }
}
