// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.CallOut;
import landfall.thread.Family;
import landfall.thread.Hand;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.thread.Taper;
import landfall.working.Pen;

/**
 * A sealing pipe thread of ISO 7: {@code R 1/2} taper outside, {@code Rc 1/2} taper inside, {@code Rp 1/2} parallel
 * inside.
 */
public final class RCallOut implements CallOut {
    /** Outside is always taper. */
    public enum Kind {
        R,
        RC,
        RP;

        String letters() {
            return this == R ? "R" : "R" + name().substring(1).toLowerCase(Locale.ROOT);
        }
    }

    private static final double TAPER = 1.0 / 16;

    private final PipeSize size;
    private final Kind kind;
    private final Hand hand;

    RCallOut(PipeSize size, Kind kind, Hand hand) {
        this.size = size;
        this.kind = kind;
        this.hand = hand;
    }

    @Override
    public ScrewThread thread() {
        return British.thread(Family.R, size, hand);
    }

    @Override
    public String normal() {
        return kind.letters() + " " + size.name() + (hand == Hand.LEFT ? "-LH" : "");
    }

    @Override
    public List<String> classes() {
        return List.of();
    }

    /** Only the parallel hole has limits; the taper threads answer with {@link #taper}. */
    @Override
    public Optional<SideLimits> limits(Side side, Pen pen) {
        if (kind != Kind.RP || side == Side.EXTERNAL) {
            return Optional.empty();
        }
        BritishBasics basic = BritishBasics.of(size, pen);
        double t = pen.write(BritishRules.T_RP, PipeTolerance.ofR(size).parallelR());
        double majorMin = BritishBasics.write(pen, BritishRules.RP_D_MIN, basic.D() - t);
        double pitchMin = BritishBasics.write(pen, BritishRules.RP_D2_MIN, basic.D2() - t);
        double pitchMax = BritishBasics.write(pen, BritishRules.RP_D2_MAX, basic.D2() + t);
        double minorMin = BritishBasics.write(pen, BritishRules.RP_D1_MIN, basic.D1() - t);
        double minorMax = BritishBasics.write(pen, BritishRules.RP_D1_MAX, basic.D1() + t);
        return Optional.of(new SideLimits(
                Side.INTERNAL,
                "Rp",
                Limits.from(Length.ofMm(majorMin)),
                BritishBasics.limits(pitchMin, pitchMax),
                BritishBasics.limits(minorMin, minorMax)));
    }

    @Override
    public Optional<Taper> taper(Pen pen) {
        if (kind == Kind.RP) {
            return Optional.empty();
        }
        BritishBasics basic = BritishBasics.of(size, pen);
        double a = pen.write(BritishRules.GAUGE, size.gauge().length());
        double b = pen.write(BritishRules.USEFUL, size.gauge().useful());
        pen.write(BritishRules.SMALL_END_AT, 0);
        pen.write(BritishRules.TAPER, TAPER);
        double wrench = BritishBasics.write(pen, BritishRules.WRENCH, b - a);
        List<Taper.Plane> planes = List.of(
                basic.plane(BritishRules.SMALL_END, "small end", 0, -a * TAPER, pen),
                basic.plane(BritishRules.GAUGE_PLANE, "gauge plane", a, 0, pen),
                basic.plane(BritishRules.USEFUL_END, "end of the useful thread", b, (b - a) * TAPER, pen));
        PipeTolerance.Turns turns = PipeTolerance.ofR(size).turns();
        double either = kind == Kind.R ? turns.external() : turns.internal();
        pen.write(BritishRules.TURNS_PLUS, either);
        pen.write(BritishRules.TURNS_MINUS, either);
        return Optional.of(
                new Taper(TAPER, planes, new Taper.Turns(Length.ofMm(a), Length.ofMm(wrench), either, either)));
    }

    @Override
    public List<Caution> cautions() {
        return British.cautions(
                size,
                normal(),
                new Caution(
                        "remembered",
                        "Gauge length, useful length and tolerances of ISO 7 are remembered, not read.",
                        normal()));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RCallOut that && normal().equals(that.normal());
    }

    @Override
    public int hashCode() {
        return normal().hashCode();
    }

    @Override
    public String toString() {
        return normal();
    }
}
