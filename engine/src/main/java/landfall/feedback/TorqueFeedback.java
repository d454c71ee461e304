// SPDX-License-Identifier: Apache-2.0
package landfall.feedback;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.quantity.Band;
import landfall.quantity.Torque;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import landfall.working.Worked;

/**
 * The torque band of one material after measurements of the shop's own.
 *
 * @param factor on the forecast torque; low and high hold it in 95 of 100
 * @param band the torque of one cut lies within times and over this, about the corrected forecast, in 95 of 100
 * @param before the same without any measurement
 */
public record TorqueFeedback(Band factor, double band, double before, List<Caution> cautions) {
    private static final Source NOTE = Source.of("derived", "docs/methods/feedback.md");
    /** How many differences from the mean the scatter of the forecast weighs as much as. */
    private static final double WORTH = 4;

    private static final int FEW = 3;

    static final Rule BEFORE = Rule.given("b", "1", "the forecast is times and over this");
    static final Rule HALF =
            estimate("S_b", "ln(b)/2/sqrt(2)", "half of the band is the material's own, half is from cut to cut");
    static final Rule COUNT = Rule.given("n", "1", "torques measured");
    static final Rule MEAN = Rule.given("y_m", "1", "mean ln of measured over forecast torque");
    static final Rule SQUARES = Rule.given("Q", "1", "sum of the squares about that mean");
    static final Rule SCATTER =
            estimate("τ", "sqrt((4*S_b^2 + Q)/(4 + n - 1))", "scatter of ln torque from cut to cut");
    public static final Rule WEIGHT =
            estimate("k_n", "S_b^2/(S_b^2 + τ^2/n)", "weight of the measurements against the forecast");
    public static final Rule FACTOR = estimate("K_s", "exp(k_n*y_m)", "factor of this shop and material");
    static final Rule DOUBT = estimate("u_s", "S_b*sqrt(1 - k_n)", "standard uncertainty of its ln");
    public static final Rule FACTOR_LOW = estimate("K_sl", "K_s/exp(2*u_s)", "factor of this shop and material, low");
    public static final Rule FACTOR_HIGH = estimate("K_sh", "K_s*exp(2*u_s)", "factor of this shop and material, high");
    public static final Rule BAND =
            estimate("b_s", "exp(2*sqrt(u_s^2 + τ^2))", "one cut is times and over this, about the corrected forecast");

    /** A torque beside the forecast for that very cut, its wear, depth and fluid counted. */
    public record Compared(Torque measured, Band forecast) {
        public Compared {
            if (!(measured.nm() > 0)) {
                throw new OutOfRange(
                        "torque", measured.nm() + " N·m", "more than 0", "correct the event in which it was measured");
            }
            if (!(forecast.low() > 0 && forecast.high() > forecast.expected())) {
                throw new OutOfRange(
                        "forecast torque",
                        forecast.low() + " to " + forecast.high() + " N·m",
                        "a band over 0",
                        "ask for the forecast of the same cut");
            }
        }

        double ln() {
            return Math.log(measured.nm() / forecast.expected());
        }

        double band() {
            return forecast.high() / forecast.expected();
        }
    }

    public TorqueFeedback {
        cautions = List.copyOf(cautions);
    }

    /** @param group the forecast's own band of that material, times and over */
    public static Worked<TorqueFeedback> of(List<Compared> cuts, double group) {
        if (!(group > 1)) {
            throw new OutOfRange("band", group + "", "more than 1", "take high over expected of a forecast");
        }
        for (Compared cut : cuts) {
            if (Math.abs(cut.band() / group - 1) > 1e-6) {
                throw new OutOfRange(
                        "band of a cut",
                        "%.4g".formatted(cut.band()),
                        "%.4g, as the material's is".formatted(group),
                        "part the cuts by material first");
            }
        }
        return Worked.of(pen -> cuts.isEmpty() ? none(group, pen) : learn(cuts, group, pen));
    }

    private static TorqueFeedback none(double group, Pen pen) {
        double b = pen.write(BEFORE, group);
        return new TorqueFeedback(
                new Band(Math.exp(-Math.log(b) * Math.sqrt(0.5)), 1, Math.exp(Math.log(b) * Math.sqrt(0.5))),
                b,
                b,
                List.of(new Caution("priorOnly", "No torque of this material is on record: the band is as forecast.")));
    }

    private static TorqueFeedback learn(List<Compared> cuts, double group, Pen pen) {
        double b = pen.write(BEFORE, group);
        double S_b = pen.write(HALF, Math.log(b) / 2 / Math.sqrt(2));
        double n = pen.write(COUNT, cuts.size());
        double y_m = pen.write(
                MEAN, cuts.stream().mapToDouble(Compared::ln).average().orElseThrow());
        double Q = pen.write(
                SQUARES,
                cuts.stream()
                        .mapToDouble(cut -> (cut.ln() - y_m) * (cut.ln() - y_m))
                        .sum());
        double tau = pen.write(SCATTER, Math.sqrt((WORTH * S_b * S_b + Q) / (WORTH + n - 1)));
        double k_n = pen.write(WEIGHT, S_b * S_b / (S_b * S_b + tau * tau / n));
        double K = pen.write(FACTOR, Math.exp(k_n * y_m));
        double u = pen.write(DOUBT, S_b * Math.sqrt(1 - k_n));
        Band factor =
                new Band(pen.write(FACTOR_LOW, K / Math.exp(2 * u)), K, pen.write(FACTOR_HIGH, K * Math.exp(2 * u)));
        double after = pen.write(BAND, Math.exp(2 * Math.sqrt(u * u + tau * tau)));
        return new TorqueFeedback(factor, after, b, cautions(cuts, k_n * y_m, b, after));
    }

    private static List<Caution> cautions(List<Compared> cuts, double shift, double before, double after) {
        List<Caution> cautions = new ArrayList<>();
        if (cuts.size() < FEW) {
            cautions.add(new Caution(
                    "fewRecords",
                    "Torques on record for this material: " + cuts.size() + ". The forecast still weighs with them.",
                    "n"));
        }
        if (after > before) {
            cautions.add(new Caution(
                    "scatterWide",
                    "Torques of this material scatter more than the forecast allows for: the band is wider, not"
                            + " narrower. Look whether wear, depth and fluid were the same.",
                    "τ"));
        }
        if (Math.abs(shift) > Math.log(before)) {
            cautions.add(new Caution(
                    "outsideForecast",
                    "Torques of this material lie outside the band of the forecast. Look to the hole size, the fluid"
                            + " and the meter.",
                    "K_s"));
        }
        return cautions;
    }

    /** A forecast of the same material with what the measurements say. */
    public Band narrowed(Band forecast) {
        double middle = forecast.expected() * factor.expected();
        return new Band(middle / band, middle, middle * band);
    }

    private static Rule estimate(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "1", NOTE, Trust.ESTIMATE, means);
    }
}
