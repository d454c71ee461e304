// SPDX-License-Identifier: Apache-2.0
package landfall.thread.whitworth;

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
import landfall.working.Pen;
import landfall.working.Rule;

/** A Whitworth call-out such as {@code 1/4-20 BSW} or {@code 1/2-16 BSF-close-LH}. */
public final class WhitworthCallOut implements CallOut {
    private static final double DEPTH = 0.640327;
    private static final Profile FORM =
            new Profile("Whitworth 55 deg", Angle.ofDeg(55), DEPTH / 2, DEPTH, 1.0 / 6, 1.0 / 6);

    private final WhitworthSize size;
    private final Optional<WhitworthClass> fit;
    private final Hand hand;

    WhitworthCallOut(WhitworthSize size, Optional<WhitworthClass> fit, Hand hand) {
        this.size = size;
        this.fit = fit;
        this.hand = hand;
    }

    @Override
    public ScrewThread thread() {
        return new ScrewThread(Family.WHITWORTH, FORM, size.major(), new Lead(size.pitch(), 1), hand);
    }

    @Override
    public String normal() {
        return size.label() + fit.map(each -> "-" + each.code()).orElse("") + (hand == Hand.LEFT ? "-LH" : "");
    }

    @Override
    public List<String> classes() {
        return fit.map(WhitworthClass::code).stream().toList();
    }

    @Override
    public CallOut withoutClass() {
        return new WhitworthCallOut(size, Optional.empty(), hand);
    }

    @Override
    public Optional<SideLimits> limits(Side side, Pen pen) {
        WhitworthClass named = fit.orElse(WhitworthClass.MEDIUM);
        return named.isFor(side) ? Optional.of(limits(side, named, pen)) : Optional.empty();
    }

    private SideLimits limits(Side side, WhitworthClass named, Pen pen) {
        double D = pen.write(WhitworthRules.D, size.major().inch());
        double n = pen.write(WhitworthRules.N, Length.MM_PER_INCH / size.pitch().mm());
        double p = pen.write(WhitworthRules.P, 1 / n);
        double D2 = write(pen, WhitworthRules.D2, D - DEPTH * p);
        double D1 = write(pen, WhitworthRules.D1, D - 2 * DEPTH * p);
        double T = pen.write(WhitworthRules.T, 0.002 * Math.cbrt(D) + 0.003 * Math.sqrt(D) + 0.005 * Math.sqrt(p));
        double tolerance = pen.write(named.rule(side), named.share() * T);
        if (side == Side.EXTERNAL) {
            pen.write(WhitworthRules.D_MAX, D);
            pen.write(WhitworthRules.D2_TOP, D2);
            pen.write(WhitworthRules.D1_TOP, D1);
            double dMin = write(pen, WhitworthRules.D_MIN, D - tolerance - 0.01 * Math.sqrt(p));
            double d2Min = write(pen, WhitworthRules.D2_MIN, D2 - tolerance);
            return new SideLimits(
                    side, named.code(), inches(dMin, D), inches(d2Min, D2), Limits.upTo(Length.ofInch(D1)));
        }
        pen.write(WhitworthRules.INT_D2_MIN, D2);
        pen.write(WhitworthRules.INT_D1_MIN, D1);
        double D2Max = write(pen, WhitworthRules.D2_MAX, D2 + tolerance);
        double TD1 = minorTolerance(n, p, pen);
        double D1Max = write(pen, WhitworthRules.D1_MAX, D1 + TD1);
        return new SideLimits(side, named.code(), Limits.from(Length.ofInch(D)), inches(D2, D2Max), inches(D1, D1Max));
    }

    private static double minorTolerance(double n, double p, Pen pen) {
        if (n >= 26) {
            return pen.write(WhitworthRules.TD1_FINE, 0.2 * p + 0.004);
        }
        return n >= 22
                ? pen.write(WhitworthRules.TD1_MIDDLE, 0.2 * p + 0.005)
                : pen.write(WhitworthRules.TD1_COARSE, 0.2 * p + 0.007);
    }

    private static double write(Pen pen, Rule rule, double inch) {
        return pen.write(rule, Rounding.halfUp(inch, 4));
    }

    private static Limits inches(double min, double max) {
        return new Limits(Length.ofInch(min), Length.ofInch(max));
    }

    @Override
    public List<Caution> cautions() {
        List<Caution> cautions = new ArrayList<>();
        cautions.add(new Caution(
                "remembered",
                "The tolerance rules of BS 84 are remembered, not read; the basic sizes are sure.",
                normal()));
        cautions.add(new Caution(
                "mixing",
                "Whitworth is 55 degrees. Many sizes share threads an inch with Unified coarse (60 "
                        + "degrees): they start together "
                        + "and then bind. 1/2 differs: 12 against 13.",
                normal()));
        if (size.series() == WhitworthSize.Series.WHIT) {
            cautions.add(new Caution(
                    "specialThread", "Not a standard BSW or BSF pair: taps are made to " + "order.", normal()));
        }
        return cautions;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WhitworthCallOut that && normal().equals(that.normal());
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
