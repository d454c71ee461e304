// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import landfall.dialling.Chips;
import landfall.fault.Caution;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * Equality of the chamfers, by length and by load.
 *
 * <p>A tooth that stands e proud has a chamfer shorter by {@code e/tan κ}: from lengths to heights {@code e_i = (l_mean
 * - l_i) tan κ}, and from heights to chips as in {@link Chips}.
 *
 * @param worst largest chip over the mean chip; null without lengths
 */
record ChamferEquality(List<Check> checks, @Nullable Double worst, Verdict length, Verdict share) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/regrind.md");
    private static final Source PRACTICE = Source.of("common-practice", "inspection of a reground tap");
    static final Rule LIMIT_LENGTH =
            Rule.table("m_l", "1", PRACTICE, Trust.PRACTICE, "chamfer lengths alike within this share of the pitch");
    static final Rule LIMIT_SHARE =
            Rule.table("m_max", "1", PRACTICE, Trust.PRACTICE, "largest chip over the mean chip, at most");
    static final Rule PITCH = Rule.given("P", "mm", "pitch");
    static final Rule LEAD = Rule.given("L", "mm", "lead, advance in one turn");
    static final Rule FLUTES = Rule.given("N", "1", "flutes");
    static final Rule CHAMFER = Rule.given("κ", "deg", "chamfer angle to the axis");
    static final Rule MEAN_CHIP =
            new Rule("h_0", "L/N*tan(κ)", "mm", GEOMETRY, Trust.DERIVED, "radial chip of a tooth when all are alike");
    private static final double PITCH_SHARE = 0.2;
    private static final double WORST_SHARE = 1.3;

    private static final String LOUPE = "chamfer length of each land, by loupe and scale";
    private static final String DIAL = "edge of each land against the thread, by dial, or from the chamfer lengths";

    static ChamferEquality of(Tap tap, Reground found, Pen pen) {
        double limit = pen.write(LIMIT_LENGTH, PITCH_SHARE)
                * pen.write(PITCH, tap.thread().pitch().mm());
        double most = pen.write(LIMIT_SHARE, WORST_SHARE);
        String lengthRule = "alike within %s (a fifth of the pitch, common practice)".formatted(words(limit));
        String shareRule =
                String.format(Locale.ROOT, "largest chip at most %.1f times the mean (common practice)", most);
        if (found.chamferLengths().isEmpty()) {
            return new ChamferEquality(
                    List.of(
                            new Check("chamferLength", LOUPE, lengthRule, "", null),
                            new Check("loadShare", DIAL, shareRule, "", null)),
                    null,
                    Verdict.UNSURE,
                    Verdict.UNSURE);
        }
        double[] lengths =
                found.chamferLengths().stream().mapToDouble(Length::mm).toArray();
        double difference = greatest(lengths) - least(lengths);
        // two lands are compared, each with its own error
        double uncertainty = Math.sqrt(2) * found.lengthUncertainty().mm();
        Verdict length = Verdict.atMost(difference, uncertainty, limit);
        Angle kappa = tap.chamfer().angle();
        double h0 = meanChip(tap, pen);
        double worst = worst(lengths, kappa, h0, pen);
        double worstUncertainty = uncertainty * Math.tan(kappa.rad()) / h0;
        Verdict share = Verdict.atMost(worst, worstUncertainty, most);
        String told = String.format(Locale.ROOT, "%.2f, uncertainty %.2f", worst, worstUncertainty);
        return new ChamferEquality(
                List.of(
                        new Check("chamferLength", LOUPE, lengthRule, words(difference), length),
                        new Check("loadShare", DIAL, shareRule, told, share)),
                worst,
                length,
                share);
    }

    private static double meanChip(Tap tap, Pen pen) {
        double L = pen.write(LEAD, tap.thread().lead().perTurn().mm());
        double N = pen.write(FLUTES, tap.flutes().count());
        double kappa = pen.write(CHAMFER, tap.chamfer().angle().deg());
        return pen.write(MEAN_CHIP, L / N * Math.tan(Math.toRadians(kappa)));
    }

    private static double worst(double[] lengths, Angle kappa, double h0, Pen pen) {
        int flutes = lengths.length;
        double mean = Arrays.stream(lengths).average().orElseThrow();
        List<String> symbols = new ArrayList<>();
        for (int i = 1; i <= flutes; i++) {
            pen.write(Rule.given("l_" + i, "mm", "chamfer length of land " + i), lengths[i - 1]);
            symbols.add("l_" + i);
        }
        String sum = "(%s)/N".formatted(String.join(" + ", symbols));
        List<Length> proud = new ArrayList<>();
        for (int i = 1; i <= flutes; i++) {
            Rule rule = new Rule(
                    "e_" + i,
                    "(%s - l_%d)*tan(κ)".formatted(sum, i),
                    "mm",
                    GEOMETRY,
                    Trust.DERIVED,
                    "edge of land %d proud, radially".formatted(i));
            proud.add(Length.ofMm(pen.write(rule, (mean - lengths[i - 1]) * Math.tan(kappa.rad()))));
        }
        double greatest = 0;
        List<Length> chips = Chips.of(Length.ofMm(h0), proud);
        for (int i = 1; i <= flutes; i++) {
            greatest = Math.max(
                    greatest, pen.write(Chips.rule(i, flutes), chips.get(i - 1).mm()));
        }
        return pen.write(Chips.worst(flutes), greatest / h0);
    }

    /** Said when one rule passes the tap and the other does not. */
    Optional<Caution> disagreement() {
        if (worst == null || length == share || length == Verdict.UNSURE || share == Verdict.UNSURE) {
            return Optional.empty();
        }
        return Optional.of(new Caution(
                "rulesDisagree",
                length == Verdict.GOOD
                        ? "The chamfer lengths are alike by the length rule, yet one tooth cuts too much"
                                + " of the chip. The share rule is what the tap feels: grind again."
                        : "The chamfer lengths differ by more than the length rule allows, yet the load"
                                + " is shared well: the share rule is what the tap feels.",
                "loadShare"));
    }

    private static String words(double mm) {
        return Length.ofMm(mm).words();
    }

    private static double greatest(double[] values) {
        return Arrays.stream(values).max().orElseThrow();
    }

    private static double least(double[] values) {
        return Arrays.stream(values).min().orElseThrow();
    }
}
