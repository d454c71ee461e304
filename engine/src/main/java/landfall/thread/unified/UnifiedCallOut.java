// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.CallOut;
import landfall.thread.ExternalExtras;
import landfall.thread.Family;
import landfall.thread.Hand;
import landfall.thread.Lead;
import landfall.thread.MinorRounding;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.thread.scan.Numerals;
import landfall.working.Pen;

/** A Unified call-out such as {@code 1/4-20 UNC-2B} or {@code 10-32 UNRF-3A-LH}. */
public record UnifiedCallOut(UnifiedSize size, Form form, Fit fit, Hand hand, Note note) implements CallOut {
    /** The series, and what root the external thread must have. */
    public record Form(Series series, Root root) {
        String code() {
            return root.letters() + series.suffix();
        }
    }

    /** The classes named: none, one, or one of each side. */
    public record Fit(Optional<UnifiedClass> external, Optional<UnifiedClass> internal) {
        public static final Fit NONE = new Fit(Optional.empty(), Optional.empty());

        boolean isOpen() {
            return external.isEmpty() && internal.isEmpty();
        }

        String code() {
            String outside = external.map(UnifiedClass::code).orElse("");
            String inside = internal.map(UnifiedClass::code).orElse("");
            return outside.isEmpty() || inside.isEmpty() ? outside + inside : outside + "/" + inside;
        }
    }

    /**
     * What else the note says.
     *
     * @param engagement special length of engagement in 1e-8 in, zero for that of the series
     * @param gaugingSystem 21, 22 or 23, zero when none is named
     */
    public record Note(long engagement, int gaugingSystem) {
        public static final Note NONE = new Note(0, 0);
    }

    @Override
    public ScrewThread thread() {
        return new ScrewThread(
                form.root.isJ() ? Family.UNJ : Family.UNIFIED,
                form.root.isJ() ? Profile.J_60 : Profile.ISO_60,
                size.majorLength(),
                new Lead(size.pitchLength(), size.starts()),
                hand);
    }

    @Override
    public String normal() {
        StringBuilder text =
                new StringBuilder(32).append(size.label()).append(' ').append(form.code());
        if (!fit.isOpen()) {
            text.append('-').append(fit.code());
        }
        if (hand == Hand.LEFT) {
            text.append("-LH");
        }
        if (note.gaugingSystem != 0) {
            text.append(" (").append(note.gaugingSystem).append(')');
        }
        if (note.engagement != 0) {
            text.append(" LE ").append(Numerals.plain(note.engagement));
        }
        return text.toString();
    }

    @Override
    public List<String> classes() {
        return Stream.of(fit.external, fit.internal)
                .flatMap(Optional::stream)
                .map(UnifiedClass::code)
                .toList();
    }

    /**
     * The class in force on a side: as named; 2A and 2B, or 3A and 3B of UNJ, when none is; empty when only the other
     * side is named.
     */
    public Optional<UnifiedClass> classOn(Side side) {
        if (!fit.isOpen()) {
            return side == Side.EXTERNAL ? fit.external : fit.internal;
        }
        if (form.root.isJ()) {
            return Optional.of(side == Side.EXTERNAL ? UnifiedClass.A3 : UnifiedClass.B3);
        }
        return Optional.of(side == Side.EXTERNAL ? UnifiedClass.A2 : UnifiedClass.B2);
    }

    @Override
    public Optional<SideLimits> limits(Side side, Pen pen) {
        return limits(side, MinorRounding.CURRENT, pen);
    }

    @Override
    public Optional<SideLimits> limits(Side side, MinorRounding rounding, Pen pen) {
        return classOn(side)
                .map(named -> side == Side.EXTERNAL
                        ? arithmetic(pen).external(named, form.root, pen)
                        : arithmetic(pen).internal(named, form.root, rounding, pen));
    }

    @Override
    public CallOut withoutClass() {
        return new UnifiedCallOut(size, form, Fit.NONE, hand, note);
    }

    /** Threads with the large root radius keep their own minor limits: no rule by engagement is held for them. */
    @Override
    public Optional<Limits> hole(Length engagement, Pen pen) {
        if (form.root.isJ()) {
            return limits(Side.INTERNAL, pen).map(SideLimits::minor);
        }
        return classOn(Side.INTERNAL)
                .map(named -> HoleByEngagement.of(arithmetic(pen).minorUnrounded(named, pen), size, engagement, pen));
    }

    @Override
    public Optional<ExternalExtras> externalExtras(Pen pen) {
        boolean hotRolled = form.series == Series.UNC || form.series == Series.UN && size.pitch() == Numerals.ONE / 8;
        return classOn(Side.EXTERNAL)
                .map(named -> arithmetic(pen).extras(named, form.root, hotRolled && named == UnifiedClass.A2, pen));
    }

    /** The tolerance of the internal minor diameter before the limit is rounded; empty when only a screw is named. */
    public Optional<Length> internalMinorTolerance(Pen pen) {
        return classOn(Side.INTERNAL).map(named -> arithmetic(pen).minorToleranceOf(named, pen));
    }

    private UnifiedLimits arithmetic(Pen pen) {
        return note.engagement != 0
                ? UnifiedLimits.over(size, note.engagement, pen)
                : UnifiedLimits.of(size, engagementIsDiameter(), Published.of(size), pen);
    }

    /** UNC, UNF, and constant pitches of 4, 6 and 8: LE is the diameter. All others: nine pitches. */
    private boolean engagementIsDiameter() {
        return switch (form.series) {
            case UNC, UNF -> true;
            case UN -> size.pitch() >= Numerals.ONE / 8;
            case UNEF, UNS -> false;
        };
    }

    @Override
    public List<Caution> cautions() {
        return UnifiedCautions.of(this);
    }

    /** Whether any class in force satisfies the test. */
    boolean hasClass(Predicate<UnifiedClass> test) {
        List<UnifiedClass> inForce = new ArrayList<>();
        classOn(Side.EXTERNAL).ifPresent(inForce::add);
        classOn(Side.INTERNAL).ifPresent(inForce::add);
        return inForce.stream().anyMatch(test);
    }
}
