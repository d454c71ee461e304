// SPDX-License-Identifier: Apache-2.0
package landfall.thread.insert;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Rounding;
import landfall.thread.CallOut;
import landfall.thread.Family;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.thread.metric.MetricCallOut;
import landfall.thread.unified.UnifiedCallOut;
import landfall.working.Pen;
import landfall.working.Rule;

/** A hole for a wire insert, such as {@code STI 1/4-20 UNC-2B} or {@code STI M6x1-5H}, by its nominal thread. */
public record InsertCallOut(CallOut nominal) implements CallOut {
    /** The wire fills one thread outside and one inside: 1.5 H on the diameter. */
    private static final double GROWTH = 1.29903811;

    private static final Set<String> LIMIT_SYMBOLS = Set.of("Dmin", "D2min", "D2max", "D1min", "D1max");
    private static final double PITCH_GROWTH = 0.64951905;
    private static final double MINOR_GROWTH = 0.21650635;

    public InsertCallOut {
        boolean plain = nominal instanceof UnifiedCallOut || nominal instanceof MetricCallOut;
        if (!plain || !nominal.thread().profile().equals(Profile.ISO_60)) {
            throw new IllegalArgumentException("no insert hole for " + nominal.normal());
        }
    }

    private boolean isInch() {
        return nominal instanceof UnifiedCallOut;
    }

    /** The thread of the hole itself: what the tap cuts. */
    @Override
    public ScrewThread thread() {
        ScrewThread small = nominal.thread();
        return new ScrewThread(
                isInch() ? Family.STI_INCH : Family.STI_METRIC,
                Profile.ISO_60,
                small.major().plus(small.pitch().times(GROWTH)),
                small.lead(),
                small.hand());
    }

    @Override
    public String normal() {
        return "STI " + nominal.normal();
    }

    @Override
    public List<String> classes() {
        return nominal.classes();
    }

    @Override
    public Optional<SideLimits> limits(Side side, Pen pen) {
        return side == Side.EXTERNAL ? Optional.empty() : Optional.of(hole(pen));
    }

    private SideLimits hole(Pen pen) {
        CallOut graded = nominal instanceof MetricCallOut metric ? metric.orInternal("5H") : nominal;
        Pen tolerancesOnly = withoutLimits(pen);
        SideLimits small = graded.limits(Side.INTERNAL, tolerancesOnly).orElseThrow();
        Length pitchTolerance = width(small.pitch());
        Length minorTolerance = graded instanceof UnifiedCallOut unified
                ? unified.internalMinorTolerance(tolerancesOnly).orElseThrow()
                : width(small.minor());
        InsertRules rules = isInch() ? InsertRules.INCH : InsertRules.METRIC;
        Length major = grown(rules.major(), GROWTH, pen);
        Length pitch = grown(rules.pitchMin(), PITCH_GROWTH, pen);
        Length minor = grown(rules.minorMin(), MINOR_GROWTH, pen);
        Length pitchMax = written(rules.pitchMax(), pitch.plus(pitchTolerance), pen);
        Length minorMax = written(rules.minorMax(), minor.plus(minorTolerance), pen);
        return new SideLimits(
                Side.INTERNAL,
                small.className(),
                Limits.from(major),
                new Limits(pitch, pitchMax),
                new Limits(minor, minorMax));
    }

    /**
     * The nominal thread's tolerances belong to the working, its limits do not: those of the hole have their symbols.
     */
    private static Pen withoutLimits(Pen pen) {
        return (rule, value) -> LIMIT_SYMBOLS.contains(rule.symbol()) ? value : pen.write(rule, value);
    }

    private static Length width(Limits limits) {
        return Objects.requireNonNull(limits.max()).minus(Objects.requireNonNull(limits.min()));
    }

    private Length grown(Rule rule, double growth, Pen pen) {
        ScrewThread small = nominal.thread();
        Length major = isInch() ? Length.ofInch(Rounding.halfUp(small.major().inch(), 4)) : small.major();
        return written(rule, major.plus(small.pitch().times(growth)), pen);
    }

    private Length written(Rule rule, Length length, Pen pen) {
        return isInch()
                ? Length.ofInch(pen.write(rule, Rounding.halfUp(length.inch(), 4)))
                : Length.ofMm(pen.write(rule, Rounding.halfUp(length.mm(), 3)));
    }

    @Override
    public List<Caution> cautions() {
        List<Caution> cautions = new ArrayList<>(nominal.cautions());
        cautions.add(new Caution(
                "mixing",
                "An insert tap has the nominal pitch but is larger by 1.3 P: it is no tap of the next size. "
                        + "Mark it so.",
                normal()));
        cautions.add(new Caution(
                "remembered",
                "That the tolerances of the nominal thread serve the insert hole is remembered, not read; "
                        + "the least sizes "
                        + "follow from the shape of the wire.",
                normal()));
        return List.copyOf(cautions);
    }
}
