// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;

/** Whether a pair of diameter and pitch is in the series that a call-out names, and which pairs are near it. */
public final class UnifiedPairs {
    private UnifiedPairs() {}

    /** Every standard call-out without its class, coarse first. */
    public static List<String> callOuts() {
        return Series.sizes().stream().map(UnifiedPairs::named).toList();
    }

    private static String named(UnifiedSize size) {
        return size.label() + " UN" + Series.of(size).orElse(Series.UNS).suffix();
    }

    /** The standard threads of the diameter that a call-out begins with, as a mend; empty when it has none. */
    public static String mend(InchHead head) {
        UnifiedSize given = UnifiedSize.of(head, 1);
        List<String> same = Series.sizes().stream()
                .filter(each -> each.major() == given.major())
                .sorted(Comparator.comparing(each -> each.pitch() != given.pitch()))
                .limit(3)
                .map(UnifiedPairs::named)
                .toList();
        return same.isEmpty() ? "" : "write " + String.join(" or ", same) + ", with a class such as 2B if one is meant";
    }

    static void judge(Cursor c, int seriesAt, UnifiedSize size, Series named, boolean specialEngagement) {
        if (size.starts() > 1) {
            return;
        }
        Optional<Series> right = Series.of(size);
        if (right.map(standard -> standard == named).orElse(named == Series.UNS)
                || named == Series.UNS && specialEngagement) {
            return;
        }
        String why = "says UN" + named.suffix() + " at character " + (seriesAt + 1) + ", but " + size.label() + " is "
                + right.map(standard -> "UN" + standard.suffix()).orElse("in no standard series");
        throw c.refuse(seriesAt, why, mend(size, named));
    }

    private static String mend(UnifiedSize size, Series named) {
        Stream<String> asItIs = Stream.of(named(size));
        Stream<String> sameSeries = Series.sizes().stream()
                .filter(each -> each.major() == size.major())
                .filter(each -> Series.of(each).filter(named::equals).isPresent())
                .map(UnifiedPairs::named);
        return "write "
                + String.join(
                        " or ",
                        Stream.concat(asItIs, sameSeries).distinct().limit(3).toList());
    }
}
