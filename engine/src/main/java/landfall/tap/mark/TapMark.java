// SPDX-License-Identifier: Apache-2.0
package landfall.tap.mark;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.LimitMark;

/** What a tap says of its pitch diameter. */
public sealed interface TapMark {
    /** H, L, D or a class of ISO 2857. */
    record Limit(LimitMark mark) implements TapMark {
        @Override
        public String words() {
            return mark.kind() == LimitMark.Kind.CLASS
                    ? "ISO " + mark.number()
                    : mark.kind().name() + mark.number();
        }
    }

    /** The maker's extension beyond class 3: 0.7 to 0.9 of t. */
    record SevenG() implements TapMark {
        @Override
        public String words() {
            return "7G";
        }
    }

    /** Thread cut, not ground: the wider limits of the cut-thread tables. */
    record CutThread() implements TapMark {
        @Override
        public String words() {
            return "cut thread";
        }
    }

    /** Inch taps whose oversize is no step of .0005: it is added to the least pitch diameter. */
    record Oversize(Length over) implements TapMark {
        @Override
        public String words() {
            return String.format(Locale.ROOT, "+%.4f", over.inch()).replace("+0.", "+.");
        }
    }

    /** Limits that were given as diameters: of special taps, and of X positions, which no standard defines. */
    record Own(Limits pitch) implements TapMark {
        @Override
        public String words() {
            return "own limits";
        }
    }

    /** As written on a shank or spoken. */
    String words();

    /** {@code ISO 2}, {@code ISO2/6H}, {@code 2/6H}, {@code 6H}: a class of tap, or the hole that it is meant for. */
    Pattern CLASS_OF_HOLE = Pattern.compile(
            "ISO\\s*([123])|(?:ISO\\s*)?([123])\\s*/\\s*[4-8][GH](?:[4-8][GH])?|([4-8][GH](?:[4-8]H)?)",
            Pattern.CASE_INSENSITIVE);

    Pattern OVER = Pattern.compile("(?:PLUS|\\+)\\s*(0?\\.\\d{3,4})(?:\\s*(?:IN|\"))?", Pattern.CASE_INSENSITIVE);

    /** The mark as it is stamped or spoken; empty when it is none of those known. */
    static Optional<TapMark> read(String text) {
        String mark = text.strip();
        Optional<LimitMark> limit = LimitMark.read(mark);
        if (limit.isPresent()) {
            return limit.map(Limit::new);
        }
        if (mark.toUpperCase(Locale.ROOT).matches("CUT|CUT[ -]THREAD|CT")) {
            return Optional.of(new CutThread());
        }
        if (mark.equalsIgnoreCase("7G")) {
            return Optional.of(new SevenG());
        }
        Matcher over = OVER.matcher(mark);
        if (over.matches()) {
            return Optional.of(new Oversize(Length.ofInch(Double.parseDouble(over.group(1)))));
        }
        return classOfHole(mark);
    }

    private static Optional<TapMark> classOfHole(String mark) {
        Matcher matcher = CLASS_OF_HOLE.matcher(mark);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String number = matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
        int tapClass = number == null ? classFor(matcher.group(3).toUpperCase(Locale.ROOT)) : Integer.parseInt(number);
        return tapClass == 0 ? Optional.empty() : Optional.of(new Limit(new LimitMark(LimitMark.Kind.CLASS, tapClass)));
    }

    /** The class of tap that is meant for a hole; 0 where none is. */
    private static int classFor(String hole) {
        return switch (hole) {
            case "4H", "5H", "4H5H" -> 1;
            case "6H", "4G", "5G" -> 2;
            case "6G", "7H", "8H" -> 3;
            default -> 0;
        };
    }
}
