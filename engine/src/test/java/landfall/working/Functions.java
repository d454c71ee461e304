// SPDX-License-Identifier: Apache-2.0
package landfall.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/** The functions a printed formula may name. Angles in degrees. */
final class Functions {
    private Functions() {}

    static double work(String name, List<Double> given) {
        return switch (name) {
            case "min" -> given.stream().mapToDouble(x -> x).min().orElseThrow();
            case "max" -> given.stream().mapToDouble(x -> x).max().orElseThrow();
            case "if" -> {
                count(name, given, 3);
                yield given.get(0) != 0 ? given.get(1) : given.get(2);
            }
            case "round" -> {
                count(name, given, 2);
                yield round(given.get(0), given.get(1), RoundingMode.HALF_UP);
            }
            case "roundeven" -> {
                count(name, given, 2);
                yield round(given.get(0), given.get(1), RoundingMode.HALF_EVEN);
            }
            default -> {
                count(name, given, 1);
                yield ofOne(name, given.get(0));
            }
        };
    }

    private static double ofOne(String name, double x) {
        return switch (name) {
            case "sin" -> Math.sin(Math.toRadians(x));
            case "cos" -> Math.cos(Math.toRadians(x));
            case "tan" -> Math.tan(Math.toRadians(x));
            case "asin" -> Math.toDegrees(Math.asin(x));
            case "acos" -> Math.toDegrees(Math.acos(x));
            case "atan" -> Math.toDegrees(Math.atan(x));
            case "sqrt" -> Math.sqrt(x);
            case "floor" -> Math.floor(x);
            case "abs" -> Math.abs(x);
            case "exp" -> Math.exp(x);
            case "ln" -> Math.log(x);
            default -> throw new IllegalArgumentException("function " + name + " is not known");
        };
    }

    /**
     * To the nearest multiple of the step, halves as the mode says; 13 figures are looked at, so that 0.15 is a half.
     */
    private static double round(double x, double step, RoundingMode mode) {
        return new BigDecimal(x)
                .round(new MathContext(13))
                .divide(BigDecimal.valueOf(step), 0, mode)
                .multiply(BigDecimal.valueOf(step))
                .doubleValue();
    }

    private static void count(String name, List<Double> given, int wanted) {
        if (given.size() != wanted) {
            throw new IllegalArgumentException("function " + name + " takes " + wanted + ", not " + given.size());
        }
    }
}
