// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import landfall.fault.Caution;
import landfall.thread.CallOut;
import landfall.thread.Family;
import landfall.thread.Hand;
import landfall.thread.Lead;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.thread.scan.Cursor;
import landfall.working.Pen;

/** A metric call-out such as {@code M8x1.25-6H} or {@code M16xPh3P1.5-6H-L-LH}. */
public record MetricCallOut(Form form, MetricSize size, Fit fit, Engagement engagement, Hand hand) implements CallOut {
    /** Up to M1.4 the usual zones are 5H and 6h. */
    private static final int SMALLEST_WITH_USUAL_ZONES = 14_000;
    /** MJ holes are 4H6H to pitch 0.8, 4H5H above. */
    private static final int COARSEST_J_WITH_GRADE_6 = 8_000;

    /** M, or MJ with its controlled root radius and raised minor diameter. */
    public enum Form {
        M,
        MJ;

        boolean isJ() {
            return this == MJ;
        }
    }

    /** The zones named: none, one, or one of each side. */
    public record Fit(Optional<Zone> internal, Optional<Zone> external) {
        public static final Fit NONE = new Fit(Optional.empty(), Optional.empty());

        boolean isOpen() {
            return external.isEmpty() && internal.isEmpty();
        }

        String code() {
            return String.join(
                    "/",
                    Stream.of(internal, external)
                            .flatMap(Optional::stream)
                            .map(Zone::code)
                            .toList());
        }
    }

    @Override
    public ScrewThread thread() {
        return new ScrewThread(
                form.isJ() ? Family.MJ : Family.METRIC,
                form.isJ() ? Profile.J_60 : Profile.ISO_60,
                size.majorLength(),
                new Lead(size.pitchLength(), size.starts()),
                hand);
    }

    @Override
    public String normal() {
        StringBuilder text =
                new StringBuilder(24).append(form.isJ() ? "MJ" : "M").append(size.pair());
        if (!fit.isOpen()) {
            text.append('-').append(fit.code());
        }
        String length = engagement.code();
        if (!length.isEmpty()) {
            text.append('-').append(length);
        }
        if (hand == Hand.LEFT) {
            text.append("-LH");
        }
        return text.toString();
    }

    @Override
    public List<String> classes() {
        return Stream.of(fit.internal, fit.external)
                .flatMap(Optional::stream)
                .map(Zone::code)
                .toList();
    }

    /**
     * The same call-out with this internal class where it names none; families built on this one have usual classes of
     * their own.
     */
    public MetricCallOut orInternal(String code) {
        Fit named = new Fit(Optional.of(ZoneReader.read(new Cursor(code))), Optional.empty());
        return fit.isOpen() ? new MetricCallOut(form, size, named, engagement, hand) : this;
    }

    /** The zone in force on a side: as named, the usual one when none is, empty when only the other side is named. */
    public Optional<Zone> zone(Side side) {
        if (fit.isOpen()) {
            return Optional.of(side == Side.INTERNAL ? usualInside() : usualOutside());
        }
        return side == Side.INTERNAL ? fit.internal : fit.external;
    }

    /** Medium quality: one grade finer for short engagement, one coarser for long. */
    private Zone usualInside() {
        if (form.isJ()) {
            return new Zone(4, 'H', size.pitch() <= COARSEST_J_WITH_GRADE_6 ? 6 : 5, 'H');
        }
        boolean tiny = size.diameter() <= SMALLEST_WITH_USUAL_ZONES;
        return switch (engagement.group()) {
            case S -> Zone.of(5, 'H');
            case N -> Zone.of(tiny ? 5 : 6, 'H');
            case L -> Zone.of(7, 'H');
        };
    }

    private Zone usualOutside() {
        if (form.isJ()) {
            return new Zone(4, 'h', 6, 'h');
        }
        char position = size.diameter() <= SMALLEST_WITH_USUAL_ZONES ? 'h' : 'g';
        return switch (engagement.group()) {
            case S -> new Zone(5, position, 6, position);
            case N -> Zone.of(6, position);
            case L -> new Zone(7, position, 6, position);
        };
    }

    @Override
    public Optional<SideLimits> limits(Side side, Pen pen) {
        return zone(side)
                .map(zone -> side == Side.INTERNAL
                        ? new MetricLimits(size, pen).internal(form, zone)
                        : new MetricLimits(size, pen).external(form, zone));
    }

    @Override
    public CallOut withoutClass() {
        return new MetricCallOut(form, size, Fit.NONE, engagement, hand);
    }

    @Override
    public List<Caution> cautions() {
        return MetricCautions.of(this);
    }
}
