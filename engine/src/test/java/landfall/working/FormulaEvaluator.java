// SPDX-License-Identifier: Apache-2.0
package landfall.working;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads a printed formula and works it out, as a learner would with a pocket calculator. Knows nothing of the code that
 * the formula stands for: that is its use. The syntax is told in {@link Rule}.
 *
 * <pre>
 * comparison = sum [("&lt;" | "&lt;=" | "&gt;" | "&gt;=") sum]
 * sum        = product {("+" | "-") product}
 * product    = signed {("*" | "/") signed}
 * signed     = "-" signed | power
 * power      = primary ["^" signed]
 * primary    = number | "pi" | symbol | function "(" comparison {"," comparison} ")" | "(" comparison ")"
 * </pre>
 */
final class FormulaEvaluator {
    /** A formula that cannot be read, or that asks for a symbol nobody gave. */
    static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Unreadable(String message) {
            super(message);
        }
    }

    /** What each symbol stands for; null for one that nobody gave. */
    interface Symbols {
        @Nullable
        Double of(String symbol);
    }

    private final String formula;
    private final Symbols symbols;
    private int at;

    private FormulaEvaluator(String formula, Symbols symbols) {
        this.formula = formula;
        this.symbols = symbols;
    }

    /** The figure that the formula gives with these symbols. Angles in degrees. */
    static double evaluate(String formula, Symbols symbols) {
        FormulaEvaluator reader = new FormulaEvaluator(formula, symbols);
        double value = reader.comparison();
        reader.blanks();
        if (reader.at < formula.length()) {
            throw reader.unreadable("'" + formula.charAt(reader.at) + "' does not belong");
        }
        return value;
    }

    private double comparison() {
        double left = sum();
        if (take("<=")) {
            return left <= sum() ? 1 : 0;
        }
        if (take(">=")) {
            return left >= sum() ? 1 : 0;
        }
        if (take("<")) {
            return left < sum() ? 1 : 0;
        }
        if (take(">")) {
            return left > sum() ? 1 : 0;
        }
        return left;
    }

    private double sum() {
        double value = product();
        while (true) {
            if (take("+")) {
                value += product();
            } else if (take("-")) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = signed();
        while (true) {
            if (take("*")) {
                value *= signed();
            } else if (take("/")) {
                value /= signed();
            } else {
                return value;
            }
        }
    }

    private double signed() {
        return take("-") ? -signed() : power();
    }

    private double power() {
        double base = primary();
        return take("^") ? Math.pow(base, signed()) : base;
    }

    private double primary() {
        blanks();
        if (take("(")) {
            double value = comparison();
            expect(")");
            return value;
        }
        if (at < formula.length() && startsNumber(formula.charAt(at))) {
            return number();
        }
        if (at < formula.length() && Character.isLetter(formula.codePointAt(at))) {
            int from = at;
            String name = name();
            return take("(") ? function(name, from) : symbol(name, from);
        }
        throw unreadable(at < formula.length() ? "'" + formula.charAt(at) + "' does not belong" : "it ends too soon");
    }

    private static boolean startsNumber(char c) {
        return (c >= '0' && c <= '9') || c == '.';
    }

    private double number() {
        int from = at;
        while (at < formula.length() && startsNumber(formula.charAt(at))) {
            at++;
        }
        if (formula.substring(at).matches("[eE][+-]?[0-9].*")) {
            at += 2;
            while (at < formula.length() && Character.isDigit(formula.charAt(at))) {
                at++;
            }
        }
        try {
            return Double.parseDouble(formula.substring(from, at));
        } catch (NumberFormatException e) {
            throw unreadable("'" + formula.substring(from, at) + "' is no number");
        }
    }

    /** Letters of any script, digits and subscripts, underscore, dot, and primes. */
    private String name() {
        int from = at;
        while (at < formula.length()) {
            int c = formula.codePointAt(at);
            boolean belongs = Character.isLetterOrDigit(c)
                    || Character.getType(c) == Character.OTHER_NUMBER
                    || "_.'′″".indexOf(c) >= 0;
            if (!belongs) {
                break;
            }
            at += Character.charCount(c);
        }
        return formula.substring(from, at);
    }

    private double symbol(String name, int from) {
        if (name.equals("pi")) {
            return Math.PI;
        }
        Double value = symbols.of(name);
        if (value == null) {
            throw unreadable(from, "no step before it has the symbol " + name);
        }
        return value;
    }

    private double function(String name, int from) {
        List<Double> given = new ArrayList<>();
        do {
            given.add(comparison());
        } while (take(","));
        expect(")");
        try {
            return Functions.work(name, given);
        } catch (IllegalArgumentException e) {
            throw unreadable(from, String.valueOf(e.getMessage()));
        }
    }

    private void expect(String sign) {
        if (!take(sign)) {
            throw unreadable("'" + sign + "' is missing");
        }
    }

    private boolean take(String sign) {
        blanks();
        if (formula.startsWith(sign, at)) {
            at += sign.length();
            return true;
        }
        return false;
    }

    private void blanks() {
        while (at < formula.length() && Character.isWhitespace(formula.charAt(at))) {
            at++;
        }
    }

    private Unreadable unreadable(String why) {
        return unreadable(at, why);
    }

    private Unreadable unreadable(int place, String why) {
        return new Unreadable("formula '" + formula + "' at place " + (place + 1) + ": " + why);
    }
}
