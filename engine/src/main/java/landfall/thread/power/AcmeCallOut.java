// SPDX-License-Identifier: Apache-2.0
package landfall.thread.power;

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
import landfall.thread.scan.Numerals;
import landfall.working.Pen;
import landfall.working.Rule;

/** An Acme call-out such as {@code 1/2-10 ACME-2G}, {@code 1.0000-0.2P-0.4L ACME-3G} or {@code 1/2-10 STUB ACME-LH}. */
public record AcmeCallOut(AcmeSize size, boolean stub, Optional<AcmeClass> fit, Hand hand) implements CallOut {
    private static final Profile FULL = new Profile("Acme 29 deg", Angle.ofDeg(29), 0.25, 0.5, 0.3707, 0.3707);
    private static final Profile STUB = new Profile("Stub Acme 29 deg", Angle.ofDeg(29), 0.15, 0.3, 0.4224, 0.4224);

    @Override
    public ScrewThread thread() {
        return new ScrewThread(
                stub ? Family.STUB_ACME : Family.ACME,
                stub ? STUB : FULL,
                Length.ofInch(size.inches()),
                new Lead(size.pitchLength(), size.starts()),
                hand);
    }

    @Override
    public String normal() {
        return size.label()
                + (stub ? " STUB ACME" : " ACME")
                + fit.map(each -> "-" + each.code()).orElse("")
                + (hand == Hand.LEFT ? "-LH" : "");
    }

    @Override
    public List<String> classes() {
        return fit.map(AcmeClass::code).stream().toList();
    }

    /** A class of Acme is one of screws and of nuts: both sides answer. */
    @Override
    public Optional<SideLimits> limits(Side side, Pen pen) {
        return Optional.of(side == Side.EXTERNAL ? external(pen) : internal(pen));
    }

    private AcmeClass named() {
        return fit.orElse(AcmeClass.G2);
    }

    private AcmeRules rules() {
        return stub ? AcmeRules.STUBBED : AcmeRules.FULL;
    }

    private double height() {
        return stub ? 0.3 : 0.5;
    }

    /** Basic sizes and the class's tolerance: what both sides begin with. */
    private record Basis(double D, double p, double E, double c, double crest, double T) {}

    private Basis basis(Pen pen) {
        double D = pen.write(AcmeRules.D, size.inches());
        double p = pen.write(AcmeRules.P_GIVEN, size.pitchLength().inch());
        double E = write(pen, rules().pitchLine(), D - height() * p);
        double c = pen.write(AcmeRules.CLEARANCE, p >= 0.1 ? 0.02 : 0.01);
        double crest = pen.write(AcmeRules.CREST, Math.max(0.05 * p, 0.005));
        double T = pen.write(named().toleranceRule(), named().tolerance(D, p));
        return new Basis(D, p, E, c, crest, T);
    }

    private SideLimits external(Pen pen) {
        Basis b = basis(pen);
        double es = write(pen, named().allowanceRule(), named().allowance(b.D));
        double T = Rounding.halfUp(b.T, 4);
        double dMax = pen.write(AcmeRules.D_MAX, b.D);
        double dMin = write(pen, AcmeRules.D_MIN, b.D - b.crest);
        double d2Max = write(pen, AcmeRules.D2_MAX, b.E - es);
        double d2Min = write(pen, AcmeRules.D2_MIN, d2Max - T);
        double d1Max = write(pen, rules().root(), b.D - 2 * height() * b.p - b.c);
        double Tr = write(pen, rules().rootTolerance(), stub ? b.T : 1.5 * b.T);
        double d1Min = write(pen, AcmeRules.D1_MIN, d1Max - Tr);
        return new SideLimits(
                Side.EXTERNAL, named().code(), inches(dMin, dMax), inches(d2Min, d2Max), inches(d1Min, d1Max));
    }

    private SideLimits internal(Pen pen) {
        Basis b = basis(pen);
        double DMin = write(pen, AcmeRules.INT_D_MIN, b.D + b.c);
        double DMax = write(pen, AcmeRules.INT_D_MAX, b.D + 2 * b.c);
        double D2Min = write(pen, AcmeRules.INT_D2_MIN, b.E);
        double D2Max = write(pen, AcmeRules.INT_D2_MAX, b.E + Rounding.halfUp(b.T, 4));
        double D1Min = write(pen, rules().internalMinor(), b.D - 2 * height() * b.p);
        double D1Max = write(pen, AcmeRules.INT_D1_MAX, D1Min + b.crest);
        return new SideLimits(
                Side.INTERNAL, named().code(), inches(DMin, DMax), inches(D2Min, D2Max), inches(D1Min, D1Max));
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
        String name = normal();
        if (stub) {
            cautions.add(new Caution(
                    "doubtful",
                    "Tolerances of stub Acme are remembered, and the one published row met does not bear them out.",
                    name));
        } else if (named() != AcmeClass.G2) {
            cautions.add(
                    new Caution("remembered", "Allowances of classes 3G and 4G are remembered, not " + "read.", name));
        } else {
            cautions.add(new Caution(
                    "remembered", "The major diameter limits of the nut are remembered, not " + "read.", name));
        }
        if (!size.isStandard()) {
            cautions.add(new Caution(
                    "specialThread",
                    "Not a standard Acme pair: by formula. Some lists borrow the figures of the standard "
                            + "size with this pitch.",
                    name));
        }
        if (size.starts() > 1) {
            cautions.add(new Caution(
                    "multiStartTolerance",
                    "Several starts: the limits are those of the pitch; wider ones are in use. Agree them "
                            + "on the drawing.",
                    size.starts() + " starts of " + Numerals.plain(size.pitch()) + " in"));
        }
        return List.copyOf(cautions);
    }
}
