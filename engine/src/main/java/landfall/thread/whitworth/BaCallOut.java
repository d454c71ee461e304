// SPDX-License-Identifier: Apache-2.0
package landfall.thread.whitworth;

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

/** A BA call-out such as {@code 2 BA} or {@code 6 BA-close-LH}. */
public final class BaCallOut implements CallOut {
    private static final int LAST_LARGE = 10;
    private static final Profile FORM = new Profile("BA 47.5 deg", Angle.ofDeg(47.5), 0.3, 0.6, 0.236, 0.236);

    private final BaSize size;
    private final Optional<WhitworthClass> fit;
    private final Hand hand;

    BaCallOut(BaSize size, Optional<WhitworthClass> fit, Hand hand) {
        this.size = size;
        this.fit = fit;
        this.hand = hand;
    }

    @Override
    public ScrewThread thread() {
        return new ScrewThread(
                Family.BA, FORM, Length.ofMm(size.major()), new Lead(Length.ofMm(size.pitch()), 1), hand);
    }

    @Override
    public String normal() {
        return size.number() + " BA" + fit.map(each -> "-" + each.code()).orElse("") + (hand == Hand.LEFT ? "-LH" : "");
    }

    @Override
    public List<String> classes() {
        return fit.map(WhitworthClass::code).stream().toList();
    }

    @Override
    public CallOut withoutClass() {
        return new BaCallOut(size, Optional.empty(), hand);
    }

    /** Close is a class of screws only; normal is the one class of holes and the usual one of screws. */
    @Override
    public Optional<SideLimits> limits(Side side, Pen pen) {
        boolean close = fit.filter(each -> each == WhitworthClass.CLOSE).isPresent();
        double D = pen.write(BaRules.D, size.major());
        double P = pen.write(BaRules.P, size.pitch());
        double D2 = write(pen, BaRules.D2, D - 0.6 * P);
        double D1 = write(pen, BaRules.D1, D - 1.2 * P);
        if (side == Side.EXTERNAL) {
            pen.write(BaRules.D_MAX, D);
            pen.write(BaRules.D2_TOP, D2);
            pen.write(BaRules.D1_TOP, D1);
            return Optional.of(close ? close(D, D2, D1, pen) : normal(D, D2, D1, pen));
        }
        if (close) {
            return Optional.empty();
        }
        pen.write(BaRules.INT_D2_MIN, D2);
        pen.write(BaRules.INT_D1_MIN, D1);
        double D2Max = write(pen, BaRules.D2_MAX, D2 + 0.12 * P + 0.03);
        double D1Max = write(pen, BaRules.D1_MAX, D1 + 0.375 * P);
        return Optional.of(new SideLimits(side, "normal", Limits.from(Length.ofMm(D)), mm(D2, D2Max), mm(D1, D1Max)));
    }

    private SideLimits close(double D, double D2, double D1, Pen pen) {
        double P = size.pitch();
        double dMin = write(pen, BaRules.D_MIN_CLOSE, D - 0.15 * P);
        double d2Min = write(pen, BaRules.D2_MIN_CLOSE, D2 - 0.08 * P - 0.02);
        double d1Min = write(pen, BaRules.D1_MIN_CLOSE, D1 - 2 * (0.08 * P + 0.02));
        return new SideLimits(Side.EXTERNAL, "close", mm(dMin, D), mm(d2Min, D2), mm(d1Min, D1));
    }

    private SideLimits normal(double D, double D2, double D1, Pen pen) {
        double P = size.pitch();
        double dMin = size.number() <= LAST_LARGE
                ? write(pen, BaRules.D_MIN, D - 0.2 * P)
                : write(pen, BaRules.D_MIN_SMALL, D - 0.25 * P);
        double d2Min = write(pen, BaRules.D2_MIN, D2 - 0.1 * P - 0.025);
        double d1Min = write(pen, BaRules.D1_MIN, D1 - 0.2 * P - 0.05);
        return new SideLimits(Side.EXTERNAL, "normal", mm(dMin, D), mm(d2Min, D2), mm(d1Min, D1));
    }

    private static double write(Pen pen, Rule rule, double mm) {
        return pen.write(rule, Rounding.halfUp(mm, 3));
    }

    private static Limits mm(double min, double max) {
        return new Limits(Length.ofMm(min), Length.ofMm(max));
    }

    @Override
    public List<Caution> cautions() {
        return List.of(
                new Caution(
                        "remembered",
                        "Tolerances of BS 93 come from a poor scan; the sign of the internal effective "
                                + "tolerance is read as plus, and "
                                + "that of the screw's effective diameter is half the tolerance of its "
                                + "minor diameter.",
                        normal()),
                new Caution(
                        "mixing",
                        "BA is 47.5 degrees: no metric tap of nearly the same size and pitch fits it.",
                        normal()));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BaCallOut that && normal().equals(that.normal());
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
