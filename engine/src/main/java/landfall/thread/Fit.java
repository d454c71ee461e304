// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import java.util.Optional;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * The fit between the two mating threads: how much room is left between their flanks, told as a difference of pitch
 * diameters.
 *
 * <p>A call-out that names one side's class only is held against the usual class of the other side; {@code usual} says
 * which side that is.
 *
 * @param usual the side that the call-out does not name; null when it names both or none
 * @param least clearance, least hole over greatest screw
 * @param greatest clearance, greatest hole over least screw
 */
public record Fit(
        SideLimits internal, SideLimits external, @Nullable Side usual, Length least, Length greatest) {
    private static final String LEAST = "least clearance at the pitch diameter";
    private static final String GREATEST = "greatest clearance at the pitch diameter";
    static final Rule LEAST_MM = rule("c_min", "D2min - d2max", "mm", LEAST);
    static final Rule LEAST_INCH = rule("c_min", "D2min - d2max", "in", LEAST);
    static final Rule GREATEST_MM = rule("c_max", "D2max - d2min", "mm", GREATEST);
    static final Rule GREATEST_INCH = rule("c_max", "D2max - d2min", "in", GREATEST);

    private static Rule rule(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, Source.of("derived", "fit of two threads"), Trust.DERIVED, means);
    }

    /** Empty where a family has no limits for one of the sides. */
    public static Optional<Fit> of(CallOut callOut, MinorRounding rounding, Pen pen) {
        Optional<SideLimits> internal = callOut.limits(Side.INTERNAL, rounding, Pen.NONE);
        Optional<SideLimits> external = callOut.limits(Side.EXTERNAL, rounding, Pen.NONE);
        Side usual = null;
        CallOut open = callOut.withoutClass();
        if (internal.isEmpty() && external.isPresent()) {
            usual = Side.INTERNAL;
            internal = open.limits(Side.INTERNAL, rounding, pen);
        } else if (external.isEmpty() && internal.isPresent()) {
            usual = Side.EXTERNAL;
            external = open.limits(Side.EXTERNAL, rounding, pen);
        }
        if (internal.isEmpty() || external.isEmpty()) {
            return Optional.empty();
        }
        return of(
                internal.get(), external.get(), usual, callOut.thread().family().system() == UnitSystem.INCH, pen);
    }

    private static Optional<Fit> of(
            SideLimits internal, SideLimits external, @Nullable Side usual, boolean inch, Pen pen) {
        Length D2min = internal.pitch().min();
        Length D2max = internal.pitch().max();
        Length d2min = external.pitch().min();
        Length d2max = external.pitch().max();
        if (D2min == null || D2max == null || d2min == null || d2max == null) {
            return Optional.empty();
        }
        Length least = D2min.minus(d2max);
        Length greatest = D2max.minus(d2min);
        if (inch) {
            least = Length.ofInch(pen.write(LEAST_INCH, least.inch()));
            greatest = Length.ofInch(pen.write(GREATEST_INCH, greatest.inch()));
        } else {
            least = Length.ofMm(pen.write(LEAST_MM, least.mm()));
            greatest = Length.ofMm(pen.write(GREATEST_MM, greatest.mm()));
        }
        return Optional.of(new Fit(internal, external, usual, least, greatest));
    }
}
