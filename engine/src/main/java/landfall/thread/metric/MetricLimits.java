// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.thread.metric.MetricCallOut.Form;
import landfall.thread.metric.Tolerances.Entry;
import landfall.thread.metric.Tolerances.Kind;
import landfall.working.Pen;
import landfall.working.Rule;

/** Limits of size of one metric thread. Lengths are whole micrometres. */
final class MetricLimits {
    private static final long PITCH_LINE = 64_951_905L;
    private static final long DEPTH = 108_253_175L;
    private static final long DEPTH_J = 97_427_858L;
    private static final long ROOT_J = 115_470_054L;
    private static final long ROUNDED_ROOT = 61_602_540L;
    /** A coefficient of 1e-8 times a pitch in 1e-4 mm comes in units of 1e-12 mm; so many make a micrometre. */
    private static final long MICROMETRE = 1_000_000_000L;

    private static final int[] PERCENT_BY_STARTS = {100, 100, 112, 125, 140, 160};

    private final MetricSize size;
    private final Pen pen;

    MetricLimits(MetricSize size, Pen pen) {
        this.size = size;
        this.pen = pen;
        pen.write(MetricRules.D, size.majorLength().mm());
        pen.write(MetricRules.P, size.pitchMm());
    }

    /** The basic major diameter in 1e-12 mm, exactly, so that nothing is rounded before the standard rounds. */
    private long exactMajor() {
        return size.diameter() * 100_000_000L;
    }

    private static long roundToMicrometres(long exact) {
        return (exact + MICROMETRE / 2) / MICROMETRE;
    }

    private long write(Rule rule, long um) {
        pen.write(rule, um / 1000.0);
        return um;
    }

    private static Length length(long um) {
        return Length.ofMm(um / 1000.0);
    }

    private static Limits limits(long min, long max) {
        return new Limits(length(min), length(max));
    }

    private long basicPitch() {
        return write(MetricRules.D2, roundToMicrometres(exactMajor() - PITCH_LINE * size.pitch()));
    }

    private long basicMinor() {
        return write(MetricRules.D1, roundToMicrometres(exactMajor() - DEPTH * size.pitch()));
    }

    private long basicMinorOfJ() {
        return write(MetricRules.D1_J, roundToMicrometres(exactMajor() - DEPTH_J * size.pitch()));
    }

    /** The basic major diameter: diameters finer than a micrometre do not occur in call-outs that are read. */
    private long basicMajor() {
        return roundToMicrometres(exactMajor());
    }

    SideLimits internal(Form form, Zone zone) {
        long EI = deviation(Side.INTERNAL, zone.pitchPosition());
        long DMin = write(MetricRules.INT_D_MIN, basicMajor() + EI);
        long D2Min = write(MetricRules.INT_D2_MIN, basicPitch() + EI);
        long D2Max = write(MetricRules.INT_D2_MAX, D2Min + pitchTolerance(Kind.TD2, zone.pitchGrade()));
        long D1Min = write(MetricRules.INT_D1_MIN, (form.isJ() ? basicMinorOfJ() : basicMinor()) + EI);
        long D1Max = write(MetricRules.INT_D1_MAX, D1Min + tolerance(Kind.TD1, zone.crestGrade(), true));
        return new SideLimits(
                Side.INTERNAL, zone.code(), Limits.from(length(DMin)), limits(D2Min, D2Max), limits(D1Min, D1Max));
    }

    SideLimits external(Form form, Zone zone) {
        long es = deviation(Side.EXTERNAL, zone.pitchPosition());
        long dMax = write(MetricRules.D_MAX, basicMajor() + es);
        long dMin = write(MetricRules.D_MIN, dMax - tolerance(Kind.Td, zone.crestGrade(), true));
        long d2Max = write(MetricRules.D2_MAX, basicPitch() + es);
        long Td2 = pitchTolerance(Kind.Td2, zone.pitchGrade());
        long d2Min = write(MetricRules.D2_MIN, d2Max - Td2);
        if (form.isJ()) {
            long rootMax = exactMajor() - ROOT_J * size.pitch();
            long d3Max = write(MetricRules.D3_MAX_J, roundToMicrometres(rootMax) + es);
            return new SideLimits(
                    Side.EXTERNAL, zone.code(), limits(dMin, dMax), limits(d2Min, d2Max), Limits.upTo(length(d3Max)));
        }
        long d1Max = write(MetricRules.D1_MAX, basicMinor() + es);
        long rootExact = exactMajor() + (es - Td2) * MICROMETRE - (PITCH_LINE + ROUNDED_ROOT) * size.pitch();
        long d3Min = write(MetricRules.D3_MIN, roundToMicrometres(rootExact));
        return new SideLimits(
                Side.EXTERNAL, zone.code(), limits(dMin, dMax), limits(d2Min, d2Max), limits(d3Min, d1Max));
    }

    private long deviation(Side side, char position) {
        if (position == 'h' || position == 'H') {
            return write(side == Side.EXTERNAL ? MetricRules.ES_NONE : MetricRules.EI_NONE, 0);
        }
        Entry entry = Tolerances.deviation(position, size);
        long amount = entry.isBlank() ? ToleranceFormula.deviation(position, size.pitchMm()) : entry.um();
        Rule rule = MetricRules.deviation(side, position, entry.isBlank(), entry.remembered());
        return write(rule, side == Side.EXTERNAL ? -amount : amount);
    }

    private long pitchTolerance(Kind kind, int grade) {
        if (size.starts() == 1) {
            return tolerance(kind, grade, true);
        }
        int percent = PERCENT_BY_STARTS[Math.min(size.starts(), PERCENT_BY_STARTS.length - 1)];
        pen.write(MetricRules.FACTOR, percent / 100.0);
        long single = tolerance(kind, grade, false);
        return write(
                kind == Kind.TD2 ? MetricRules.TD2_STARTS : MetricRules.OUT_TD2_STARTS, (single * percent + 50) / 100);
    }

    private long tolerance(Kind kind, int grade, boolean single) {
        Entry entry = Tolerances.tolerance(kind, size, grade);
        if (!entry.isBlank()) {
            return write(MetricRules.tolerance(kind, grade, entry.remembered(), single), entry.um());
        }
        if (kind == Kind.Td2 || kind == Kind.TD2) {
            pen.write(MetricRules.MEAN, PitchIndex.meanOfRange(PitchIndex.ofDiameter(size.diameter())));
        }
        double raw = pen.write(MetricRules.raw(kind, grade), ToleranceFormula.raw(kind, size, grade));
        return write(MetricRules.preferred(kind, single), ToleranceFormula.preferred(raw));
    }
}
