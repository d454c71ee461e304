// SPDX-License-Identifier: Apache-2.0
package landfall.thread.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
import landfall.thread.power.TrapezoidalTolerances.Entry;
import landfall.thread.power.TrapezoidalTolerances.Origin;
import landfall.working.Pen;
import landfall.working.Rule;

/** A trapezoidal call-out such as {@code Tr40x7-7e} or {@code Tr40x14(P7)-7H-LH}. */
public record TrapezoidalCallOut(TrapezoidalSize size, Fit fit, Hand hand) implements CallOut {
    private static final Profile FORM =
            new Profile("ISO trapezoidal 30 " + "deg", Angle.ofDeg(30), 0.25, 0.5, 0.366, 0.366);
    private static final double[] FACTOR_BY_STARTS = {1, 1, 1.12, 1.25, 1.4, 1.6};
    private static final int USUAL_GRADE = 7;

    /**
     * The zones named; zero for none.
     *
     * @param internalGrade 7, 8 or 9, always H
     * @param externalGrade 7, 8 or 9
     * @param position e or c
     */
    public record Fit(int internalGrade, int externalGrade, char position) {
        boolean isOpen() {
            return internalGrade == 0 && externalGrade == 0;
        }

        List<String> codes() {
            return Stream.of(
                            internalGrade == 0 ? "" : internalGrade + "H",
                            externalGrade == 0 ? "" : externalGrade + "" + position)
                    .filter(code -> !code.isEmpty())
                    .toList();
        }
    }

    @Override
    public ScrewThread thread() {
        return new ScrewThread(
                Family.TRAPEZOIDAL, FORM, Length.ofMm(size.d()), new Lead(Length.ofMm(size.P()), size.starts()), hand);
    }

    @Override
    public String normal() {
        String zones = String.join("/", fit.codes());
        return size.label() + (zones.isEmpty() ? "" : "-" + zones) + (hand == Hand.LEFT ? "-LH" : "");
    }

    @Override
    public List<String> classes() {
        return fit.codes();
    }

    @Override
    public CallOut withoutClass() {
        return new TrapezoidalCallOut(size, new Fit(0, 0, fit.position()), hand);
    }

    @Override
    public Optional<SideLimits> limits(Side side, Pen pen) {
        int grade = side == Side.EXTERNAL ? fit.externalGrade : fit.internalGrade;
        if (grade == 0 && !fit.isOpen()) {
            return Optional.empty();
        }
        int inForce = grade == 0 ? USUAL_GRADE : grade;
        return Optional.of(side == Side.EXTERNAL ? external(inForce, pen) : internal(inForce, pen));
    }

    private double factor(Pen pen) {
        return pen.write(TrapezoidalRules.FACTOR, FACTOR_BY_STARTS[Math.min(size.starts(), 5)]);
    }

    private SideLimits external(int grade, Pen pen) {
        double d = pen.write(TrapezoidalRules.D, size.d());
        double P = pen.write(TrapezoidalRules.P, size.P());
        double ac = pen.write(TrapezoidalRules.AC, size.crestClearance());
        Entry es = TrapezoidalTolerances.deviation(fit.position, P);
        pen.write(TrapezoidalRules.deviation(fit.position, es.origin() != Origin.READ), es.mm());
        Entry table = TrapezoidalTolerances.pitch("Td2", d, P, grade);
        pen.write(TrapezoidalRules.pitchTolerance("Td2t", grade, table.origin()), table.mm());
        double Td2 = write(pen, TrapezoidalRules.OUT_TD2, table.mm() * factor(pen));
        Entry major = TrapezoidalTolerances.major(P);
        double Td = pen.write(
                TrapezoidalRules.crest("Td", "major diameter tolerance " + "outside", major.origin()), major.mm());
        double dMax = pen.write(TrapezoidalRules.D_MAX, d);
        double dMin = write(pen, TrapezoidalRules.D_MIN, d - Td);
        double d2 = write(pen, TrapezoidalRules.D2, d - 0.5 * P);
        double d2Max = write(pen, TrapezoidalRules.D2_MAX, d2 - es.mm());
        double d2Min = write(pen, TrapezoidalRules.D2_MIN, d2Max - Td2);
        double d3 = write(pen, TrapezoidalRules.D3, d - P - 2 * ac);
        double Td3 = write(pen, TrapezoidalRules.TD3, es.mm() + 1.25 * Td2);
        double d3Min = write(pen, TrapezoidalRules.D3_MIN, d3 - Td3);
        return new SideLimits(
                Side.EXTERNAL, grade + "" + fit.position, mm(dMin, dMax), mm(d2Min, d2Max), mm(d3Min, d3));
    }

    private SideLimits internal(int grade, Pen pen) {
        double d = pen.write(TrapezoidalRules.D, size.d());
        double P = pen.write(TrapezoidalRules.P, size.P());
        double ac = pen.write(TrapezoidalRules.AC, size.crestClearance());
        Entry table = TrapezoidalTolerances.pitch("TD2", d, P, grade);
        pen.write(TrapezoidalRules.pitchTolerance("TD2t", grade, table.origin()), table.mm());
        double TD2 = write(pen, TrapezoidalRules.TD2, table.mm() * factor(pen));
        Entry minor = TrapezoidalTolerances.minor(P);
        double TD1 = pen.write(
                TrapezoidalRules.crest("TD1", "minor diameter tolerance " + "inside", minor.origin()), minor.mm());
        double D4 = write(pen, TrapezoidalRules.D4, d + 2 * ac);
        double D2 = pen.write(TrapezoidalRules.INT_D2_MIN, write(pen, TrapezoidalRules.D2, d - 0.5 * P));
        double D2Max = write(pen, TrapezoidalRules.INT_D2_MAX, D2 + TD2);
        double D1 = write(pen, TrapezoidalRules.D1, d - P);
        double D1Max = write(pen, TrapezoidalRules.D1_MAX, D1 + TD1);
        return new SideLimits(Side.INTERNAL, grade + "H", Limits.from(Length.ofMm(D4)), mm(D2, D2Max), mm(D1, D1Max));
    }

    private static double write(Pen pen, Rule rule, double mm) {
        return pen.write(rule, Rounding.halfUp(mm, 3));
    }

    private static Limits mm(double min, double max) {
        return new Limits(Length.ofMm(min), Length.ofMm(max));
    }

    @Override
    public List<Caution> cautions() {
        List<Caution> cautions = new ArrayList<>();
        cautions.add(new Caution(
                "remembered",
                "Crest clearance, nut tolerances and all tolerances over 22.4 mm are remembered or by "
                        + "formula and preferred number; "
                        + "a table may differ by one step (6 %).",
                normal()));
        if (!size.isStandard()) {
            cautions.add(new Caution(
                    "specialThread",
                    "Not a first-choice pair of diameter and pitch: taps and gauges may be made to order.",
                    normal()));
        }
        if (size.starts() > 1) {
            cautions.add(new Caution(
                    "multiStartTolerance",
                    "Several starts: the pitch diameter tolerance is widened by remembered factors.",
                    size.starts() + " starts"));
        }
        return List.copyOf(cautions);
    }
}
