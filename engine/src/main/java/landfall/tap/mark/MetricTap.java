// SPDX-License-Identifier: Apache-2.0
package landfall.tap.mark;

import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.LimitMark;
import landfall.thread.CallOut;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.thread.metric.MetricCallOut;
import landfall.working.Pen;

/** Metric taps: classes are parts of t, the nut's pitch tolerance of grade 5, whatever hole is wanted. */
final class MetricTap {
    private static final Caution REMEMBERED = new Caution(
            "remembered", "7G lies outside ISO 2857; its place, 0.7 to 0.9 of t, is remembered from makers.", "7G");
    private static final Caution MAJOR_OPEN =
            new Caution("majorNotHeld", "The rule for the major diameter of a tap with a D limit is not held.", "D");

    private MetricTap() {}

    static TapZone zone(TapMark.Limit limit, CallOut callOut, Pen pen) {
        ScrewThread thread = callOut.thread();
        Optional<Length> t = gradeFive(callOut);
        Limits pitch = limit.mark().on(thread, t.orElse(null), pen);
        if (limit.mark().kind() == LimitMark.Kind.D) {
            return new TapZone(limit, pitch, TapZone.OPEN, List.of(MAJOR_OPEN));
        }
        return new TapZone(limit, pitch, major(thread, t.orElseThrow(), pen), List.of());
    }

    static TapZone zone(TapMark.SevenG mark, CallOut callOut, Pen pen) {
        ScrewThread thread = callOut.thread();
        double t = gradeFive(callOut)
                .orElseThrow(() -> new OutOfRange(
                        "marking", mark.words(), "on a metric thread of the tables", "give the tap's own limits"))
                .mm();
        double basic =
                pen.write(TapZoneRules.BASIC_METRIC, thread.pitchDiameter().mm());
        pen.write(TapZoneRules.GRADE_5, t);
        Limits pitch = Limits.ofMm(
                pen.write(TapZoneRules.SEVEN_G_MIN, basic + 0.7 * t),
                pen.write(TapZoneRules.SEVEN_G_MAX, basic + 0.9 * t));
        return new TapZone(mark, pitch, major(thread, Length.ofMm(t), pen), List.of(REMEMBERED));
    }

    /** Only the least is laid down. */
    private static Limits major(ScrewThread thread, Length t, Pen pen) {
        double D = pen.write(TapZoneRules.D_METRIC, thread.major().mm());
        return Limits.from(Length.ofMm(pen.write(TapZoneRules.MAJOR_METRIC, D + 0.4 * t.mm())));
    }

    /** t: of the thread itself, without the widening for several starts. */
    static Optional<Length> gradeFive(CallOut callOut) {
        if (!(callOut.withoutClass() instanceof MetricCallOut metric)) {
            return Optional.empty();
        }
        return metric.orInternal("5H")
                .limits(Side.INTERNAL, Pen.NONE)
                .map(SideLimits::pitch)
                .flatMap(pitch -> Optional.ofNullable(pitch.min())
                        .flatMap(min -> Optional.ofNullable(pitch.max()).map(max -> max.minus(min))));
    }
}
