// SPDX-License-Identifier: Apache-2.0
package landfall.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.fault.Answer;
import landfall.fault.OutOfRange;
import landfall.gauge.GaugeWish;
import landfall.gauge.Gauging;
import landfall.gauge.MeasuredPitch;
import landfall.gauge.ReadingUncertainty;
import landfall.quantity.Length;
import landfall.quantity.Measured;
import landfall.thread.CallOut;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.working.Pen;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * How a thread is gauged, how well its pitch diameter is known, and the verdict on what lies on the bench.
 *
 * @param taper null for parallel threads
 * @param pitch null when no pitch diameter was measured, or its uncertainty was not asked for
 * @param found null when nothing lies on the bench
 */
public record Examination(
        Gauging gauging,
        @Nullable TaperPlug taper,
        @Nullable MeasuredPitch pitch,
        @Nullable Found found) {
    /**
     * What is asked.
     *
     * @param standOff of the notch of a taper plug, positive out of the face; null when it was not measured
     * @param uncertainty null when none was told: then it is only assumed where a verdict needs it
     */
    public record Asked(
            GaugeWish wish,
            @Nullable Length standOff,
            @Nullable ReadingUncertainty uncertainty,
            OnBench bench) {}

    public static Answer<Worked<Examination>> of(CallOut callOut, Asked asked) {
        try {
            return Answer.of(Worked.of(pen -> compute(callOut, asked, pen)));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static Examination compute(CallOut callOut, Asked asked, Pen pen) {
        Gauging gauging = Gauging.on(callOut, asked.wish(), pen);
        TaperPlug taper = TaperPlug.of(callOut, asked.standOff(), pen).orElse(null);
        boolean onBench = !(asked.bench() instanceof OnBench.Nothing);
        ReadingUncertainty u =
                asked.uncertainty() != null ? asked.uncertainty() : onBench ? ReadingUncertainty.USUAL : null;
        MeasuredPitch pitch = u == null ? null : MeasuredPitch.of(gauging, asked.wish(), u, onBench, pen);
        return new Examination(gauging, taper, pitch, found(callOut, asked.bench(), pitch, pen));
    }

    private static @Nullable Found found(CallOut callOut, OnBench bench, @Nullable MeasuredPitch pitch, Pen pen) {
        Measured measured = pitch == null ? null : pitch.measured();
        if (bench instanceof OnBench.ATap tap) {
            return new TapFinding(callOut, tap, measured, pen).found();
        }
        if (bench instanceof OnBench.AHole hole) {
            return new HoleFinding(callOut, hole, pen).found(measured, side(callOut, Side.INTERNAL));
        }
        return bench instanceof OnBench.AScrew screw ? screw(screw, measured, side(callOut, Side.EXTERNAL), pen) : null;
    }

    private static SideLimits side(CallOut callOut, Side side) {
        Optional<SideLimits> limits = callOut.limits(side, Pen.NONE);
        return limits.orElseThrow(() -> new OutOfRange(
                "part",
                side == Side.INTERNAL ? "hole" : "screw",
                "a part that %s has limits for".formatted(callOut.normal()),
                "leave the class out of the call-out, or name one of that side"));
    }

    private static Found screw(OnBench.AScrew screw, @Nullable Measured pitch, SideLimits limits, Pen pen) {
        List<Judged> judged = new ArrayList<>();
        if (pitch != null) {
            judged.add(Judged.of("pitch diameter of the screw", pitch, limits.pitch(), pen));
        }
        if (screw.major() != null) {
            judged.add(Judged.of("major diameter of the screw", screw.major(), limits.major(), pen));
        }
        if (judged.isEmpty()) {
            throw new OutOfRange(
                    "part",
                    "screw",
                    "told with something that was measured on it",
                    "give over, pitch-diameter or crest");
        }
        Verdict verdict = judged.stream().map(Judged::verdict).reduce(Verdict.GO, Verdict::and);
        return new Found("screw", verdict, judged, null, null, List.of());
    }
}
