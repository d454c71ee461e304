// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import landfall.fault.Caution;

/** What the reader of a Unified call-out takes for granted, and says. */
final class Assumed {
    private Assumed() {}

    /** NC, NF, NEF, NS: the American National series, before 1949. */
    static Caution oldSeries(Series series) {
        return new Caution(
                "oldSeries",
                ("N%s is the American National series;"
                                + " its diameters, pitches and form of thread are those of UN%s today.")
                        .formatted(series.suffix(), series.suffix()),
                "N" + series.suffix());
    }

    /** A class of one figure was both the bolt's and the nut's. */
    static Caution noLetter(char digit) {
        return new Caution(
                "classLetterAssumed",
                ("Class %c is written without its letter, as the American National series had it; both %cA and %cB are"
                                + " answered. The old class %c had tolerances of its own: where the"
                                + " old fit matters, take"
                                + " its limits from the drawing.")
                        .formatted(digit, digit, digit, digit),
                String.valueOf(digit));
    }

    /** UN is the whole family too. */
    static Caution family(UnifiedSize size, Series series) {
        return new Caution(
                "seriesAssumed",
                series == Series.UNS
                        ? "UN names the family here: %s is in no standard series, so it is UNS.".formatted(size.label())
                        : "UN names the family here: %s is UN%s.".formatted(size.label(), series.suffix()),
                "UN");
    }
}
