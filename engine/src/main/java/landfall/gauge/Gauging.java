// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.thread.CallOut;
import landfall.thread.Family;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.working.Pen;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * How a thread is gauged and measured.
 *
 * @param gauges null when the family has no closed limits to gauge by
 * @param measured over three wires; null when nothing was asked or measured
 * @param leadTerm for the wire in use at the basic pitch diameter, or at the one asked or measured
 */
public record Gauging(
        CallOut callOut,
        @Nullable ThreadGauges gauges,
        ThreeWires.Wires wires,
        Length wire,
        Length leadTerm,
        ThreeWires.@Nullable Measurement measured,
        @Nullable VAnvil anvil,
        List<Caution> cautions) {
    public Gauging {
        cautions = List.copyOf(cautions);
    }

    /** The gauging of a call-out, or why not. */
    public static Answer<Worked<Gauging>> of(CallOut callOut, GaugeWish wish) {
        try {
            return Answer.of(Worked.of(pen -> on(callOut, wish, pen)));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    /** The same inside a larger question; throws {@link OutOfRange}. */
    public static Gauging on(CallOut callOut, GaugeWish wish, Pen pen) {
        ScrewThread thread = callOut.thread();
        Optional<SideLimits> hole = callOut.limits(Side.INTERNAL, pen);
        Optional<SideLimits> product = hole.isPresent() ? hole : callOut.limits(Side.EXTERNAL, pen);
        ThreadGauges gauges =
                product.flatMap(limits -> ThreadGauges.of(thread, limits, pen)).orElse(null);
        ThreeWires.Wires wires = ThreeWires.wires(thread, pen);
        Length wire = ThreeWires.wire(wires, wish.wire(), pen);
        ThreeWires.Measurement measured = measured(thread, wire, wish, pen);
        Length leadTerm = measured == null ? basicLeadTerm(thread, wire, pen) : measured.leadTerm();
        GaugeWish.InVAnvil in = wish.anvil();
        VAnvil anvil = in == null ? null : VAnvil.of(thread, in, wire, pen);
        return new Gauging(
                callOut, gauges, wires, wire, leadTerm, measured, anvil, cautions(callOut, gauges, wish, anvil));
    }

    private static ThreeWires.@Nullable Measurement measured(ScrewThread thread, Length wire, GaugeWish wish, Pen pen) {
        if (wish.pitchDiameter() != null) {
            ThreeWires.judge("pitch-diameter", wish.pitchDiameter(), wish.pitchDiameter(), thread);
            return ThreeWires.over(thread, wire, wish.pitchDiameter(), pen);
        }
        return wish.over() == null ? null : ThreeWires.pitchDiameter(thread, wire, wish.over(), pen);
    }

    private static Length basicLeadTerm(ScrewThread thread, Length wire, Pen pen) {
        pen.write(ThreeWires.LEAD, thread.lead().perTurn().mm());
        pen.write(ThreeWires.BASIC, thread.pitchDiameter().mm());
        double E = pen.write(
                ThreeWires.PITCH_DIAMETER_BASIC, thread.pitchDiameter().mm());
        double A = thread.profile().flankAngle().rad();
        double tangent = thread.lead().perTurn().mm() / (Math.PI * E);
        pen.write(ThreeWires.LEAD_ANGLE, Math.toDegrees(Math.atan(tangent)));
        return Length.ofMm(
                pen.write(ThreeWires.LEAD_TERM, wire.mm() * tangent * tangent * Math.cos(A) / (2 * Math.tan(A))));
    }

    private static List<Caution> cautions(
            CallOut callOut, @Nullable ThreadGauges gauges, GaugeWish wish, @Nullable VAnvil anvil) {
        List<Caution> cautions = new ArrayList<>(callOut.cautions());
        if (gauges != null) {
            cautions.addAll(gauges.cautions());
        } else if (callOut.taper(Pen.NONE).isPresent()) {
            cautions.add(taperPlug(callOut.thread().family()));
        } else {
            cautions.add(new Caution(
                    "noPlugLimits",
                    "No GO and NOT GO limits: where no class is held there is nothing to gauge by. See the thread's own"
                            + " answer.",
                    "thread"));
        }
        if (anvil != null && wish.anvil() != null && wish.anvil().crest() != null) {
            cautions.add(new Caution(
                    "crestFirst",
                    ("In a V-anvil an error of the crest diameter counts %.2f times: measure it first,"
                                            + " behind the chamfer on full")
                                    .formatted(2 * anvil.factor() - 1)
                            + " threads.",
                    "E_V"));
        }
        return cautions;
    }

    private static Caution taperPlug(Family family) {
        return family == Family.NPTF
                ? new Caution(
                        "taperPlug",
                        "A dryseal hole is gauged by the L1 plug and the L3 plug; their stand-offs"
                                + " must agree within half a"
                                + " turn (from memory). The limits of its crests and roots are not held.",
                        "thread")
                : new Caution(
                        "taperPlug",
                        "Turn the plug in by hand. The face counts, or on a chamfer larger than the"
                                + " thread the last scratch"
                                + " of thread on it (from memory).",
                        "thread");
    }
}
