// SPDX-License-Identifier: Apache-2.0
package landfall.thread.whitworth;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import landfall.thread.CallOut;
import landfall.thread.Hand;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;
import landfall.thread.scan.Numerals;
import landfall.thread.whitworth.WhitworthSize.Series;

/** Reads Whitworth and BA call-outs: {@code 1/4 BSW}, {@code 1/4-26 BSF-close}, {@code BSF 1/4}, {@code 2 BA}. */
public final class WhitworthReader {
    private static final long LARGEST = 6 * Numerals.ONE;

    private WhitworthReader() {}

    /** On from BSW, BSF or WHIT, whether the size stood before it or stands after it. */
    public static CallOut whitworth(Cursor c, Optional<InchHead> before, String name) {
        Series series = Series.valueOf(name);
        InchHead head = before.orElseGet(() -> sizeAfter(c));
        WhitworthSize size = size(c, head, series);
        Optional<WhitworthClass> fit = fit(c);
        return new WhitworthCallOut(size, fit, end(c));
    }

    private static WhitworthSize size(Cursor c, InchHead head, Series series) {
        Optional<WhitworthSize> standard = WhitworthSize.of(head.size(), series);
        if (head.pitch() == 0) {
            return standard.orElseThrow(() -> c.refuse(
                    0,
                    "names a size that " + series + " does not have",
                    WhitworthSize.of(head.size(), Series.BSW)
                            .filter(coarse -> series == Series.WHIT)
                            .map(coarse -> "write " + coarse.label() + ", or give the threads per inch")
                            .orElse("give the threads per inch with it")));
        }
        long threads = WhitworthSize.threads(head);
        boolean matches =
                standard.filter(each -> each.threadsPerInch() == threads).isPresent();
        if (series != Series.WHIT && !matches) {
            throw c.refuse(
                    0,
                    "names a pair that " + series + " does not have",
                    standard.map(each -> "write " + each.label() + ", or ").orElse("write ")
                            + "Whit for Whitworth form of any pitch");
        }
        if (head.size() > LARGEST || head.size() <= 2 * head.pitch() || threads < 2 * Numerals.ONE) {
            throw c.refuse(
                    0,
                    "is outside Whitworth form to 6 in and 2 threads an inch",
                    "check diameter and threads per inch");
        }
        return new WhitworthSize(head.size(), threads, series);
    }

    /** On from BA, whether the number stood before it or stands after it. */
    public static CallOut ba(Cursor c, Optional<InchHead> before) {
        InchHead head = before.orElseGet(() -> sizeAfter(c));
        if (head.number() < 0 || head.pitch() != 0) {
            throw c.refuse(0, "has no BA number", "write a number 0 to 16, as in 2 BA");
        }
        BaSize size = BaSize.of(head.number())
                .orElseThrow(() -> c.refuse(0, "has a BA number over 16", "BA runs from 0 to 16"));
        Optional<WhitworthClass> fit = fit(c);
        if (fit.isPresent() && fit.get() != WhitworthClass.CLOSE && fit.get() != WhitworthClass.NORMAL) {
            throw c.refuse(0, "has a class that BA does not have", "write close, normal, or none");
        }
        return new BaCallOut(size, fit, end(c));
    }

    private static InchHead sizeAfter(Cursor c) {
        c.separators();
        return InchHead.read(c);
    }

    private static Optional<WhitworthClass> fit(Cursor c) {
        c.separators();
        for (WhitworthClass each : WhitworthClass.values()) {
            if (c.takeWord(each.name())) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    private static Hand end(Cursor c) {
        c.separators();
        Hand hand = Hand.RIGHT;
        if (c.takeWord("LH")) {
            hand = Hand.LEFT;
            c.separators();
        }
        if (!c.atEnd()) {
            throw c.expected("a class (close, medium, free, normal), LH, or the end");
        }
        return hand;
    }

    /** Every BSW, BSF and BA thread in its normal form. */
    public static List<String> callOuts() {
        return Stream.concat(
                        WhitworthSize.standard().stream().map(WhitworthSize::label),
                        BaSize.all().stream().map(size -> size.number() + " BA"))
                .toList();
    }
}
