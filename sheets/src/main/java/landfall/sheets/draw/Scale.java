// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import java.util.List;
import landfall.quantity.Length;

/**
 * The scale of a drawing: paper over real, in steps that a rule can follow. ISO 5455 has 1, 2 and 5 of each decade; the
 * steps between are kept so that a small tap still fills its view.
 */
public record Scale(double ratio) {
    private static final List<Double> STEPS = List.of(1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0);

    public Scale {
        if (!(ratio > 0)) {
            throw new IllegalArgumentException("scale must be positive: " + ratio);
        }
    }

    /** The largest scale of the series at which a real length is no longer than so many millimetres of paper. */
    public static Scale fitting(Length real, double paperMm) {
        double largest = paperMm / real.mm();
        return largest < 1 ? new Scale(1 / reduction(1 / largest)) : new Scale(enlargement(largest));
    }

    /** The least step of the series that reduces enough. */
    private static double reduction(double least) {
        double decade = Math.pow(10, Math.floor(Math.log10(least)));
        for (double step : STEPS) {
            if (step * decade >= least * (1 - 1e-12)) {
                return step * decade;
            }
        }
        return 10 * decade;
    }

    private static double enlargement(double largest) {
        double decade = Math.pow(10, Math.floor(Math.log10(largest)));
        double best = STEPS.get(0);
        for (double step : STEPS) {
            if (step * decade <= largest * (1 + 1e-12)) {
                best = step;
            }
        }
        return best * decade;
    }

    /** The smaller of two scales. */
    public Scale orSmaller(Scale other) {
        return ratio <= other.ratio ? this : other;
    }

    /** Millimetres on paper. */
    public double paper(Length real) {
        return real.mm() * ratio;
    }

    /** As written beside a view, such as {@code 20 : 1}. */
    public String words() {
        return ratio >= 1 ? Coordinate.text(ratio) + " : 1" : "1 : " + Coordinate.text(1 / ratio);
    }
}
