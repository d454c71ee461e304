// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Rounding;
import landfall.thread.CallOut;
import landfall.thread.Family;
import landfall.thread.Hand;
import landfall.thread.Lead;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.thread.Taper;
import landfall.working.Pen;
import landfall.working.Rule;

/** An American taper pipe thread such as {@code 1/2-14 NPT} or {@code 1/4-18 NPTF-1}. */
public final class NptCallOut implements CallOut {
    private static final double TAPER = 1.0 / 16;
    private static final double WRENCH_PITCHES_SMALL = 3;
    private static final double WRENCH_PITCHES_BIG = 2;
    private static final double LARGEST_SMALL_OUTSIDE = 2.375;

    /** 60 degrees, 0.8 P high: the crests and roots of the taper are left 0.033 P flat. */
    private static final Profile FORM = new Profile("NPT 60 deg", Angle.ofDeg(60), 0.4, 0.8, 0.0381, 0.0381);

    private static final List<String> PLANES =
            List.of("wrench make-up in the hole", "small end", "hand-tight plane", "end of the effective thread");

    private final NptSize size;
    private final boolean dry;
    private final int grade;
    private final Hand hand;

    /**
     * @param dry NPTF: crests and roots meet before the flanks
     * @param grade class 1 or 2 of NPTF, zero when none is named
     */
    NptCallOut(NptSize size, boolean dry, int grade, Hand hand) {
        this.size = size;
        this.dry = dry;
        this.grade = grade;
        this.hand = hand;
    }

    /** At the hand-tight plane, which is the face of the hole. */
    @Override
    public ScrewThread thread() {
        double p = 1 / size.threadsPerInch();
        double E1 = smallEnd() + size.handTight() * TAPER;
        return new ScrewThread(
                dry ? Family.NPTF : Family.NPT,
                FORM,
                Length.ofInch(E1 + 0.8 * p),
                new Lead(Length.ofMm(Length.MM_PER_INCH / size.threadsPerInch()), 1),
                hand);
    }

    private double smallEnd() {
        double D = size.outside();
        return D - (0.05 * D + 1.1) / size.threadsPerInch();
    }

    @Override
    public String normal() {
        return size.label()
                + (dry ? " NPTF" : " NPT")
                + (grade == 0 ? "" : "-" + grade)
                + (hand == Hand.LEFT ? "-LH" : "");
    }

    @Override
    public List<String> classes() {
        return grade == 0 ? List.of() : List.of(Integer.toString(grade));
    }

    @Override
    public Optional<SideLimits> limits(Side side, Pen pen) {
        return Optional.empty();
    }

    @Override
    public Optional<Taper> taper(Pen pen) {
        double D = pen.write(NptRules.D, size.outside());
        pen.write(NptRules.N, size.threadsPerInch());
        double p = pen.write(NptRules.P, 1 / size.threadsPerInch());
        double L1 = pen.write(NptRules.L1, size.handTight());
        double L2 = write(pen, NptRules.L2, (0.8 * D + 6.8) * p);
        double pitches = pen.write(NptRules.L3, D <= LARGEST_SMALL_OUTSIDE ? WRENCH_PITCHES_SMALL : WRENCH_PITCHES_BIG);
        double L3 = write(pen, NptRules.L3_LENGTH, pitches * p);
        double h = write(pen, NptRules.H, 0.8 * p);
        pen.write(NptRules.TAPER, TAPER);
        pen.write(NptRules.TURNS_PLUS, 1);
        pen.write(NptRules.TURNS_MINUS, 1);
        double E0 = write(pen, NptRules.E0, smallEnd());
        double[] at = {pen.write(NptRules.AT_MAKE_UP, -L3), pen.write(NptRules.AT_SMALL_END, 0), L1, L2};
        double[] E = {
            write(pen, NptRules.E3, E0 - L3 * TAPER),
            E0,
            write(pen, NptRules.E1, E0 + L1 * TAPER),
            write(pen, NptRules.E2, E0 + L2 * TAPER)
        };
        return Optional.of(
                new Taper(TAPER, planes(at, E, h, pen), new Taper.Turns(Length.ofInch(L1), Length.ofInch(L3), 1, 1)));
    }

    /** Of NPT: at least 0.033 P, at most a figure of the table by the pitch. NPTF has limits of its own, not held. */
    @Override
    public Optional<Limits> truncation(Pen pen) {
        if (dry) {
            return Optional.empty();
        }
        double p = pen.write(NptRules.P, 1 / size.threadsPerInch());
        double least = pen.write(NptRules.TRUNCATION_MIN, Rounding.halfUp(0.033 * p, 4));
        double most = pen.write(NptRules.TRUNCATION_MAX, size.greatestTruncation());
        return Optional.of(new Limits(Length.ofInch(least), Length.ofInch(most)));
    }

    private static List<Taper.Plane> planes(double[] at, double[] E, double h, Pen pen) {
        List<Taper.Plane> planes = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            planes.add(new Taper.Plane(
                    PLANES.get(i),
                    Length.ofInch(at[i]),
                    Length.ofInch(write(pen, NptRules.CREST[i], E[i] + h)),
                    Length.ofInch(E[i]),
                    Length.ofInch(write(pen, NptRules.ROOT[i], E[i] - h))));
        }
        return planes;
    }

    private static double write(Pen pen, Rule rule, double inch) {
        return pen.write(rule, Rounding.halfUp(inch, 5));
    }

    @Override
    public List<Caution> cautions() {
        List<Caution> cautions = new ArrayList<>();
        cautions.add(Joints.PRESSURE);
        cautions.add(Joints.mixing(normal()));
        if (dry) {
            cautions.add(new Caution(
                    "mixing",
                    "An NPTF tap may cut an NPT hole, but an NPT tap may not be used for NPTF: its crests "
                            + "and roots do not seal. "
                            + "Major and minor diameters are shown with NPT's truncation; those of NPTF are "
                            + "not held.",
                    normal()));
        }
        if (size.remembered()) {
            cautions.add(new Caution("remembered", "Sizes over 3 in are remembered, not read.", normal()));
        }
        return cautions;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof NptCallOut that && normal().equals(that.normal());
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
