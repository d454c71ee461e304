// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import java.util.List;
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
import landfall.working.Pen;

/** A parallel pipe thread such as {@code G 1/2}, {@code G 1/2 A} or {@code G 3/4 B-LH}. */
public final class GCallOut implements CallOut {
    /** The external classes; the internal thread has one, without a letter. */
    public enum Grade {
        A,
        B
    }

    private final PipeSize size;
    private final Optional<Grade> grade;
    private final Hand hand;

    GCallOut(PipeSize size, Optional<Grade> grade, Hand hand) {
        this.size = size;
        this.grade = grade;
        this.hand = hand;
    }

    @Override
    public ScrewThread thread() {
        return British.thread(Family.G, size, hand);
    }

    @Override
    public String normal() {
        return "G " + size.name() + grade.map(letter -> " " + letter).orElse("") + (hand == Hand.LEFT ? "-LH" : "");
    }

    @Override
    public List<String> classes() {
        return grade.map(Grade::name).stream().toList();
    }

    @Override
    public CallOut withoutClass() {
        return new GCallOut(size, Optional.empty(), hand);
    }

    @Override
    public Optional<SideLimits> limits(Side side, Pen pen) {
        if (side == Side.INTERNAL) {
            return grade.isPresent() ? Optional.empty() : Optional.of(internal(pen));
        }
        return Optional.of(external(grade.orElse(Grade.A), pen));
    }

    private SideLimits internal(Pen pen) {
        BritishBasics basic = BritishBasics.of(size, pen);
        PipeTolerance tolerance = PipeTolerance.ofG(size);
        pen.write(BritishRules.INT_D2_MIN, basic.D2());
        pen.write(BritishRules.INT_D1_MIN, basic.D1());
        pen.write(BritishRules.TD2, tolerance.pitch());
        pen.write(BritishRules.TD1, tolerance.minor());
        double pitchMax = BritishBasics.write(pen, BritishRules.D2_MAX, basic.D2() + tolerance.pitch());
        double minorMax = BritishBasics.write(pen, BritishRules.D1_MAX, basic.D1() + tolerance.minor());
        return new SideLimits(
                Side.INTERNAL,
                "G",
                Limits.from(Length.ofMm(basic.D())),
                BritishBasics.limits(basic.D2(), pitchMax),
                BritishBasics.limits(basic.D1(), minorMax));
    }

    private SideLimits external(Grade letter, Pen pen) {
        BritishBasics basic = BritishBasics.of(size, pen);
        PipeTolerance tolerance = PipeTolerance.ofG(size);
        pen.write(BritishRules.D_MAX, basic.D());
        pen.write(BritishRules.D2_TOP, basic.D2());
        pen.write(BritishRules.D1_TOP, basic.D1());
        double Td = pen.write(BritishRules.TD, tolerance.major());
        double Td2;
        if (letter == Grade.B) {
            pen.write(BritishRules.TD2_OF_A, tolerance.pitch());
            Td2 = BritishBasics.write(pen, BritishRules.TD2_B, 2 * tolerance.pitch());
        } else {
            Td2 = pen.write(BritishRules.TD2_A, tolerance.pitch());
        }
        double majorMin = BritishBasics.write(pen, BritishRules.OUT_MIN, basic.D() - Td);
        double pitchMin = BritishBasics.write(pen, BritishRules.OUT_D2_MIN, basic.D2() - Td2);
        return new SideLimits(
                Side.EXTERNAL,
                letter.name(),
                BritishBasics.limits(majorMin, basic.D()),
                BritishBasics.limits(pitchMin, basic.D2()),
                Limits.upTo(Length.ofMm(basic.D1())));
    }

    @Override
    public List<Caution> cautions() {
        return British.cautions(
                size,
                normal(),
                new Caution(
                        "noSealOnThread",
                        "A G thread does not seal on itself: it needs a washer or an O-ring on a face.",
                        normal()));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof GCallOut that && normal().equals(that.normal());
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
