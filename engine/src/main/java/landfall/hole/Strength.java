// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.util.Optional;
import landfall.quantity.Area;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Stress;
import landfall.quantity.UnitSystem;
import landfall.thread.CallOut;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.working.Pen;
import landfall.working.Rule;
import org.jspecify.annotations.Nullable;

/**
 * What the thread holds: tensile stress area, shear areas, and the engagement at which the screw breaks before its
 * thread strips.
 *
 * <p>Counted on the least screw (2A, 6g) and the greatest hole and pitch diameter inside. Shear strength is taken as
 * half of tensile strength, a little on the safe side for the screw. Shear areas are geometric and so upper values: nut
 * dilation, bending and friction lower them. 60 degree threads only.
 *
 * @param tensileArea of the screw
 * @param externalPerLength shear area of the screw's thread for each millimetre of engagement
 * @param internalPerLength shear area of the hole's thread for each millimetre of engagement
 * @param engagement to break the screw
 * @param sizes that the formulas started from
 * @param ratio strength of the screw's thread over that of the hole's; over 1 the hole's thread strips first
 */
public record Strength(
        Area tensileArea,
        Length externalPerLength,
        Length internalPerLength,
        Length engagement,
        double ratio,
        Sizes sizes,
        StrengthRules rules) {
    /** Screws over 100,000 psi have a tensile area of their own in inch practice. */
    private static final Stress STRONG = Stress.ofPsi(100_000);

    /** Sizes that the formulas start from: of the least screw and the greatest hole. */
    public record Sizes(Length screwMajor, Length screwPitch, Length holePitch, Length hole) {
        static Optional<Sizes> of(HoleWish wish, Limits minor, StrengthRules rules, Pen pen) {
            CallOut callOut = wish.callOut();
            Optional<SideLimits> screw = callOut.withoutClass().limits(Side.EXTERNAL, pen);
            Optional<SideLimits> inside = callOut.limits(Side.INTERNAL, pen);
            Length hole = wish.hole() != null ? wish.hole() : minor.max();
            if (screw.isEmpty() || inside.isEmpty() || hole == null) {
                return Optional.empty();
            }
            Length major = screw.get().major().min();
            Length pitch = screw.get().pitch().min();
            Length holePitch = inside.get().pitch().max();
            if (major == null || pitch == null || holePitch == null) {
                return Optional.empty();
            }
            pen.write(rules.screwMajor(), major.mm());
            pen.write(rules.screwPitch(), pitch.mm());
            pen.write(rules.holePitch(), holePitch.mm());
            pen.write(wish.hole() != null ? StrengthRules.HOLE_GIVEN : rules.hole(), hole.mm());
            return Optional.of(new Sizes(major, pitch, holePitch, hole));
        }

        /** Shear area of the screw's thread in a hole of this diameter, over the engagement. */
        double external(double K, double P) {
            return Math.PI * K * (0.5 + 0.57735 * (screwPitch.mm() - K) / P);
        }

        double internal(double P) {
            double d = screwMajor.mm();
            return Math.PI * d * (0.5 + 0.57735 * (d - holePitch.mm()) / P);
        }
    }

    /** Empty for threads of other forms than 60 degrees, and where a limit is not held. */
    static Optional<Strength> of(HoleWish wish, Limits minor, Pen pen) {
        if (ShareBasis.of(wish.callOut().thread(), false) != ShareBasis.FULL_DEPTH
                || InsertSeat.diameter(wish.callOut()).isPresent()) {
            return Optional.empty();
        }
        StrengthRules rules = StrengthRules.of(wish);
        return Sizes.of(wish, minor, rules, pen).map(sizes -> of(wish, sizes, rules, pen));
    }

    private static Strength of(HoleWish wish, Sizes sizes, StrengthRules rules, Pen pen) {
        double P = wish.callOut().thread().pitch().mm();
        double area = tensileArea(wish, sizes, pen);
        double outside = pen.write(StrengthRules.EXTERNAL, sizes.external(sizes.hole.mm(), P));
        double inside = pen.write(StrengthRules.INTERNAL, sizes.internal(P));
        double equal = pen.write(StrengthRules.EQUAL, 2 * area / outside);
        double J;
        Stress screw = strength(wish.strengths().screw(), wish.strengths().part());
        Stress part = strength(wish.strengths().part(), wish.strengths().screw());
        if (screw == null || part == null) {
            J = pen.write(StrengthRules.RATIO_EQUAL, outside / inside);
        } else {
            double S_s = pen.write(StrengthRules.SCREW, screw.nPerMm2());
            double S_p = pen.write(StrengthRules.PART, part.nPerMm2());
            J = pen.write(StrengthRules.RATIO, outside * S_s / (inside * S_p));
        }
        double engagement = pen.write(StrengthRules.ENGAGEMENT, equal * Math.max(1, J));
        return new Strength(
                Area.ofMm2(area), Length.ofMm(outside), Length.ofMm(inside), Length.ofMm(engagement), J, sizes, rules);
    }

    private static @Nullable Stress strength(@Nullable Stress own, @Nullable Stress other) {
        return own != null ? own : other;
    }

    private static double tensileArea(HoleWish wish, Sizes sizes, Pen pen) {
        double d = wish.callOut().thread().major().mm();
        double P = wish.callOut().thread().pitch().mm();
        Rule rule = StrengthRules.tensileArea(wish);
        if (rule.equals(StrengthRules.AREA_METRIC)) {
            return pen.write(rule, Math.PI / 4 * square(d - 0.9382 * P));
        }
        return rule.equals(StrengthRules.AREA_STRONG)
                ? pen.write(rule, 3.1416 * square(sizes.screwPitch.mm() / 2 - 0.16238 * P))
                : pen.write(rule, 0.7854 * square(d - 0.9743 * P));
    }

    static boolean isStrong(HoleWish wish) {
        Stress screw = wish.strengths().screw();
        return screw != null
                && wish.callOut().thread().family().system() == UnitSystem.INCH
                && screw.compareTo(STRONG) > 0;
    }

    private static double square(double x) {
        return x * x;
    }
}
