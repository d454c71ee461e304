// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * A number as it was written, with what follows it.
 *
 * @param number its value
 * @param shape how it was written: fractions and leading points are inch when no unit follows
 * @param unit what follows, in small letters, without blanks, dots and hyphens inside: {@code N·m} reads {@code nm}
 */
record Written(double number, Shape shape, String unit) {
    enum Shape {
        DECIMAL,
        LEADING_POINT,
        FRACTION
    }

    /** Longer than anything that is a quantity; keeps numbers finite and findings readable. */
    static final int LONGEST = 60;

    private static final Pattern FRACTION =
            Pattern.compile("([+-]?)(?:(\\d{1,6})(?:\\s+|\\s*-\\s*))?(\\d{1,6})\\s*/\\s*(\\d{1,6})(.*)");
    private static final Pattern DECIMAL = Pattern.compile("([+-]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+))(.*)");
    private static final Pattern TWO_NUMBERS = Pattern.compile("\\s+[\\d.].*");
    private static final Pattern LEADING = Pattern.compile("[+-]?[.,].*");
    private static final Pattern GROUPED_LIKE = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");
    private static final Pattern INSIDE_UNIT = Pattern.compile("(?<=[a-z])[-.·⋅• *]+(?=[a-z0-9])|\\^|\\.$");
    private static final Map<Character, String> VULGAR = Map.ofEntries(
            Map.entry('½', "1/2"),
            Map.entry('¼', "1/4"),
            Map.entry('¾', "3/4"),
            Map.entry('⅛', "1/8"),
            Map.entry('⅜', "3/8"),
            Map.entry('⅝', "5/8"),
            Map.entry('⅞', "7/8"));

    /** Reads the number at the head of a text; {@code example} is a text that would do. */
    static Answer<Written> read(String text, String what, String example) {
        if (text.isBlank()) {
            return refused(text, "is empty", "write " + example);
        }
        if (text.length() > LONGEST) {
            return refused(text.substring(0, 20) + "..", "is too long to be " + what, "write " + example);
        }
        String asked = plain(text);
        Matcher fraction = FRACTION.matcher(asked);
        if (fraction.matches()) {
            return fraction(text, fraction);
        }
        Matcher decimal = DECIMAL.matcher(asked);
        if (!decimal.matches()) {
            return refused(text, "is not " + what, "write " + example);
        }
        return decimal(text, decimal, example);
    }

    private static Answer<Written> decimal(String text, Matcher decimal, String example) {
        String digits = decimal.group(1);
        String rest = decimal.group(2);
        if (rest.strip().startsWith(",") || rest.strip().startsWith(".")) {
            return refused(
                    text,
                    "has more than one decimal sign",
                    "write one decimal point and no thousands sign: " + example);
        }
        if (digits.endsWith(",")) {
            return refused(text, "has a comma with no digit after it", "write " + example);
        }
        if (GROUPED_LIKE.matcher(digits).matches()) {
            return refused(
                    text,
                    "has a comma that can be a decimal sign or a thousands sign",
                    "write %s or %s".formatted(digits.replace(',', '.'), digits.replace(",", "")));
        }
        if (TWO_NUMBERS.matcher(rest).matches()) {
            return refused(text, "is two numbers", "write one number and its unit: " + example);
        }
        boolean leading = LEADING.matcher(digits).matches();
        return Answer.of(new Written(
                Double.parseDouble(digits.replace(',', '.')),
                leading ? Shape.LEADING_POINT : Shape.DECIMAL,
                unit(rest)));
    }

    private static Answer<Written> fraction(String text, Matcher fraction) {
        int over = Integer.parseInt(fraction.group(4));
        int part = Integer.parseInt(fraction.group(3));
        boolean mixed = fraction.group(2) != null;
        if (over == 0) {
            return refused(text, "divides by 0", "write a fraction such as 27/64");
        }
        if (mixed && part >= over) {
            return refused(text, "has a fraction of 1 or more after the whole number", "write it like 1 1/8");
        }
        double whole = mixed ? Integer.parseInt(fraction.group(2)) : 0;
        double value = whole + (double) part / over;
        return Answer.of(
                new Written(fraction.group(1).equals("-") ? -value : value, Shape.FRACTION, unit(fraction.group(5))));
    }

    /** One spelling of signs that keyboards and papers have several of. */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        for (char c : text.strip().toCharArray()) {
            switch (c) {
                case '\u00a0', '\u2007', '\u2009', '\u202f', '\t' -> plain.append(' ');
                case '\u2212', '\u2013', '\u2010', '\u2011' -> plain.append('-');
                case '\u2044', '\u2215' -> plain.append('/');
                case '\u2032', '\u2019', '\u00b4' -> plain.append('\'');
                case '\u2033', '\u201d', '\u201c' -> plain.append('"');
                case '\u00b5', '\u03bc' -> plain.append('u');
                case '\u00b2' -> plain.append('2');
                case '\u00ba' -> plain.append('°');
                default -> plain.append(VULGAR.containsKey(c) ? " " + VULGAR.get(c) : String.valueOf(c));
            }
        }
        return plain.toString().replace("''", "\"").strip().toLowerCase(Locale.ROOT);
    }

    private static String unit(String rest) {
        return INSIDE_UNIT.matcher(rest.strip()).replaceAll("");
    }

    static <T> Answer<T> refused(String given, String why, String mend) {
        return Answer.refused(new Finding("", given, why, mend));
    }
}
