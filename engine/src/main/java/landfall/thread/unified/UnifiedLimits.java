// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import static landfall.thread.unified.InchGrain.PLACES_3;
import static landfall.thread.unified.InchGrain.PLACES_4;
import static landfall.thread.unified.InchGrain.PLACES_6;

import java.util.Optional;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.ExternalExtras;
import landfall.thread.MinorRounding;
import landfall.thread.SideLimits;
import landfall.thread.scan.InchHead;
import landfall.thread.scan.Numerals;
import landfall.working.Pen;
import landfall.working.Rule;

/**
 * Limits of size of one Unified thread, by the formulas and the rounding of the standard.
 *
 * <p>Each sum starts from the figure before it as published: d2 minimum from the four-place d2 maximum, and so on. The
 * handbook's worked examples carry the tolerance of a class to six places before it is added; the published tables add
 * it at four, and so does this. Where a published allowance or tolerance still parts from the formula the table wins:
 * see {@link Published}. Lengths are whole units of 1e-8 in.
 */
final class UnifiedLimits {
    private static final long PITCH_LINE = 64_951_905L;
    private static final long DEPTH = 108_253_175L;
    private static final long ROOT_UNDER_FLAT = 10_825_318L;
    private static final long DEPTH_J = 97_427_858L;
    private static final long ROOT_J = 115_470_054L;
    private static final long QUARTER_INCH = Numerals.ONE / 4;
    /** Number 6: from here on minor diameters have three places. */
    private static final long NUMBER_6 = 13_800_000L;

    /** To eight places as pitches are: cut off instead, 13 an inch would count as coarser than itself. */
    private static final long THIRTEEN_AN_INCH = InchHead.pitchOf(13 * Numerals.ONE);

    private final long D;
    private final long P;
    private final double pitchTwoThirds;
    private final long T2A;

    private final Published published;

    private UnifiedLimits(UnifiedSize size, long engagement, Rule engagementRule, Published published, Pen pen) {
        this.published = published;
        D = InchGrain.write(pen, UnifiedRules.D, InchGrain.up(size.major(), PLACES_4));
        P = pitch(size, pen);
        long LE = InchGrain.write(pen, engagementRule, engagement);
        double p = InchGrain.inches(P);
        pitchTwoThirds = Math.cbrt(p * p);
        double tolerance = 0.0015 * Math.cbrt(InchGrain.inches(D))
                + 0.0015 * Math.sqrt(InchGrain.inches(LE))
                + 0.015 * pitchTwoThirds;
        T2A = InchGrain.write(pen, UnifiedRules.T2A, InchGrain.up(tolerance, PLACES_6));
    }

    /** With the length of engagement of the series: the diameter, or nine pitches. */
    static UnifiedLimits of(UnifiedSize size, boolean engagementIsDiameter, Published published, Pen pen) {
        return engagementIsDiameter
                ? new UnifiedLimits(
                        size, InchGrain.up(size.major(), PLACES_4), UnifiedRules.LE_DIAMETER, published, pen)
                : new UnifiedLimits(size, 9 * size.pitch(), UnifiedRules.LE_PITCHES, published, pen);
    }

    /** With a length of engagement that the call-out states: by formula alone. */
    static UnifiedLimits over(UnifiedSize size, long engagement, Pen pen) {
        return new UnifiedLimits(size, engagement, UnifiedRules.LE_GIVEN, Published.NONE, pen);
    }

    private static long pitch(UnifiedSize size, Pen pen) {
        long n = size.threadsPerInch();
        if (n == 0) {
            return InchGrain.write(pen, UnifiedRules.P_GIVEN, size.pitch());
        }
        InchGrain.write(pen, UnifiedRules.N, n);
        return InchGrain.write(pen, UnifiedRules.P, size.pitch());
    }

    private long pitchLineOffset(Pen pen) {
        return InchGrain.write(pen, UnifiedRules.H2, InchGrain.share(PITCH_LINE, P, PLACES_6));
    }

    private long depth(Pen pen) {
        return InchGrain.write(pen, UnifiedRules.H1, InchGrain.share(DEPTH, P, PLACES_6));
    }

    private long pitchTolerance(UnifiedClass fit, Pen pen) {
        long tolerance = InchGrain.up(fit.thousandths() * T2A, PLACES_4 * 1000) / 1000;
        return published.has(fit.code())
                ? InchGrain.write(pen, UnifiedRules.publishedTolerance(fit), published.or(fit.code(), tolerance))
                : InchGrain.write(pen, UnifiedRules.pitchTolerance(fit), tolerance);
    }

    private long allowance(UnifiedClass fit, Pen pen) {
        if (fit.isClose()) {
            return InchGrain.write(pen, UnifiedRules.ES_NONE, 0);
        }
        long byFormula = InchGrain.up(3 * T2A, PLACES_4 * 10) / 10;
        return published.has(Published.ALLOWANCE)
                ? InchGrain.write(pen, UnifiedRules.ES_PUBLISHED, published.or(Published.ALLOWANCE, byFormula))
                : InchGrain.write(pen, UnifiedRules.ES, byFormula);
    }

    private long greatestMajor(UnifiedClass fit, Pen pen) {
        return InchGrain.write(pen, UnifiedRules.D_MAX, D - allowance(fit, pen));
    }

    SideLimits external(UnifiedClass fit, Root root, Pen pen) {
        long dMax = greatestMajor(fit, pen);
        Rule majorRule = fit.isLoose() ? UnifiedRules.TD_LOOSE : UnifiedRules.TD;
        long Td =
                InchGrain.write(pen, majorRule, InchGrain.up((fit.isLoose() ? 0.09 : 0.06) * pitchTwoThirds, PLACES_4));
        long dMin = InchGrain.write(pen, UnifiedRules.D_MIN, InchGrain.up(dMax - Td, PLACES_4));
        long d2Max = InchGrain.write(pen, UnifiedRules.D2_MAX, InchGrain.up(dMax - pitchLineOffset(pen), PLACES_4));
        long Td2 = pitchTolerance(fit, pen);
        long d2Min = InchGrain.write(pen, UnifiedRules.D2_MIN, InchGrain.up(d2Max - Td2, PLACES_4));
        long d1Max = root == Root.FREE ? flatRoot(dMax, pen) : rootMax(root, dMax, pen);
        return new SideLimits(
                fit.side(), fit.code(), limits(dMin, dMax), limits(d2Min, d2Max), Limits.upTo(InchGrain.length(d1Max)));
    }

    private long flatRoot(long dMax, Pen pen) {
        return InchGrain.write(pen, UnifiedRules.D1_MAX, InchGrain.up(dMax - depth(pen), PLACES_4));
    }

    private long rootMax(Root root, long dMax, Pen pen) {
        return root.isJ()
                ? InchGrain.write(
                        pen, UnifiedRules.D3_MAX_J, InchGrain.up(dMax - InchGrain.share(ROOT_J, P, PLACES_6), PLACES_4))
                : roundedRoot(flatRoot(dMax, pen), pen);
    }

    private long roundedRoot(long d1Max, Pen pen) {
        return InchGrain.write(pen, UnifiedRules.D3_MAX, d1Max - InchGrain.share(ROOT_UNDER_FLAT, P, PLACES_4));
    }

    /**
     * Allowance and rounded root, and the wider major limit for unfinished stock where asked.
     *
     * <p>The single formula d max - 1.19078493 P gives 10 of 25 published rounded-root figures to the last digit; the
     * flat root less H/8, each to four places, gives 24 of them. So that is how the tables were made.
     */
    ExternalExtras extras(UnifiedClass fit, Root root, boolean unfinished, Pen pen) {
        long es = allowance(fit, pen);
        long dMax = greatestMajor(fit, pen);
        long d3Max = rootMax(root, dMax, pen);
        Optional<Length> rough = Optional.empty();
        if (unfinished) {
            long tolerance = InchGrain.write(pen, UnifiedRules.TD_ROUGH, InchGrain.up(0.09 * pitchTwoThirds, PLACES_4));
            rough = Optional.of(InchGrain.length(
                    InchGrain.write(pen, UnifiedRules.D_ROUGH, InchGrain.up(dMax - tolerance, PLACES_4))));
        }
        return new ExternalExtras(InchGrain.length(es), InchGrain.length(d3Max), rough);
    }

    SideLimits internal(UnifiedClass fit, Root root, MinorRounding rounding, Pen pen) {
        long D2Min = InchGrain.write(pen, UnifiedRules.INT_D2_MIN, InchGrain.up(D - pitchLineOffset(pen), PLACES_4));
        long TD2 = pitchTolerance(fit, pen);
        long D2Max = InchGrain.write(pen, UnifiedRules.INT_D2_MAX, InchGrain.up(D2Min + TD2, PLACES_4));
        return new SideLimits(
                fit.side(),
                fit.code(),
                Limits.from(InchGrain.length(D)),
                limits(D2Min, D2Max),
                root.isJ() ? minorOfJ(pen) : minor(fit, rounding, pen));
    }

    /** The least only: the tolerance rule of UNJ was never read, and that of 3B is not it. */
    private Limits minorOfJ(Pen pen) {
        long D1 = D - InchGrain.share(DEPTH_J, P, PLACES_6);
        return Limits.from(InchGrain.length(InchGrain.write(pen, UnifiedRules.D1_MIN_J, InchGrain.up(D1, PLACES_4))));
    }

    /**
     * The internal minor diameter before it is rounded.
     *
     * @param least basic, to six places
     * @param places what the class's limits are rounded to
     */
    record Minor(long least, long tolerance, long places) {}

    Minor minorUnrounded(UnifiedClass fit, Pen pen) {
        long D1 = InchGrain.write(pen, UnifiedRules.INT_D1, D - depth(pen));
        long TD1 = minorTolerance(fit, pen);
        return new Minor(D1, TD1, D < NUMBER_6 || fit.isClose() ? PLACES_4 : PLACES_3);
    }

    private Limits minor(UnifiedClass fit, MinorRounding rounding, Pen pen) {
        Minor minor = minorUnrounded(fit, pen);
        long D1 = minor.least;
        long TD1 = minor.tolerance;
        boolean threePlaces = D >= NUMBER_6;
        long min;
        if (!threePlaces) {
            min = InchGrain.write(pen, UnifiedRules.D1_MIN_4, InchGrain.up(D1, PLACES_4));
        } else if (rounding == MinorRounding.PRINTED) {
            min = InchGrain.write(pen, UnifiedRules.D1_MIN_PRINTED, printed(D1));
        } else {
            min = InchGrain.write(pen, UnifiedRules.D1_MIN_3, InchGrain.up(D1, PLACES_3));
        }
        long max;
        if (!threePlaces || fit.isClose()) {
            max = InchGrain.write(pen, UnifiedRules.D1_MAX_4, InchGrain.up(D1 + TD1, PLACES_4));
        } else if (rounding == MinorRounding.PRINTED) {
            max = InchGrain.write(pen, UnifiedRules.D1_MAX_PRINTED, printed(D1 + TD1));
        } else {
            max = InchGrain.write(pen, UnifiedRules.D1_MAX_3, InchGrain.up(D1 + TD1, PLACES_3));
        }
        return limits(min, max);
    }

    private static long printed(long units) {
        return InchGrain.halfEven(InchGrain.up(units, PLACES_4), PLACES_3);
    }

    Length minorToleranceOf(UnifiedClass fit, Pen pen) {
        return InchGrain.length(minorTolerance(fit, pen));
    }

    private long minorTolerance(UnifiedClass fit, Pen pen) {
        double p = InchGrain.inches(P);
        double bySize = Math.min(0.05 * pitchTwoThirds + 0.03 * p / InchGrain.inches(D) - 0.002, 0.394 * p);
        double fine = 0.25 * p - 0.4 * p * p;
        Rule rule;
        double tolerance;
        if (fit.isClose()) {
            boolean coarse = P > THIRTEEN_AN_INCH;
            rule = coarse ? UnifiedRules.TD1_CLOSE_COARSE : UnifiedRules.TD1_CLOSE_FINE;
            tolerance = Math.max(bySize, coarse ? 0.12 * p : 0.23 * p - 1.5 * p * p);
        } else if (D < QUARTER_INCH) {
            rule = UnifiedRules.TD1_SMALL;
            tolerance = Math.max(bySize, fine);
        } else {
            boolean coarse = P >= Numerals.ONE / 4;
            rule = coarse ? UnifiedRules.TD1_COARSE : UnifiedRules.TD1_FINE;
            tolerance = coarse ? 0.15 * p : fine;
        }
        return InchGrain.write(pen, rule, InchGrain.up(tolerance, PLACES_4));
    }

    private static Limits limits(long min, long max) {
        return new Limits(InchGrain.length(min), InchGrain.length(max));
    }
}
