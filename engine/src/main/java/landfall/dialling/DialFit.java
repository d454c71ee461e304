// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What one fit tells.
 *
 * @param slope change of the reading per radian of land angle, sign as read
 * @param runOut as read, in the direction of the dial; none where these readings cannot tell it
 * @param heights of the lands read, summing to nothing, sign as read; empty where they were not fitted
 * @param spread of one reading: the larger of the scatter and of rounding to the dial's division
 * @param spare readings beyond the number of terms
 */
public record DialFit(Fitted slope, @Nullable RunOut runOut, List<LandHeight> heights, Length spread, int spare) {

    /** The height of one land above the mean of the lands, sign as read. */
    public record LandHeight(int land, Fitted height) {}

    public DialFit {
        heights = List.copyOf(heights);
    }

    /** The height of a land, if it was fitted. */
    public @Nullable Fitted height(int land) {
        return heights.stream()
                .filter(found -> found.land() == land)
                .map(LandHeight::height)
                .findFirst()
                .orElse(null);
    }

    /** Of readings that were lifted by what falls on the tap: the slope is again as read. */
    static DialFit of(Solution solution, Course course) {
        DialFit fit = of(solution);
        return new DialFit(course.asRead(fit.slope()), fit.runOut(), fit.heights(), fit.spread(), fit.spare());
    }

    static DialFit of(Solution solution) {
        LandModel model = solution.model;
        List<LandHeight> heights = new ArrayList<>();
        if (model.terms.heights) {
            for (int land : model.lands) {
                heights.add(new LandHeight(land, solution.fitted(model.height(land))));
            }
        }
        return new DialFit(
                solution.fitted(model.slope()),
                model.terms.runOut ? runOut(solution) : null,
                heights,
                Length.ofMm(solution.spread.sigma()),
                model.design.spare());
    }

    static RunOut runOut(Solution solution) {
        return RunOut.of(vector(solution), covariance(solution), solution.spread);
    }

    static double[] vector(Solution solution) {
        return new double[] {solution.value(solution.model.cosine()), solution.value(solution.model.sine())};
    }

    static double[][] covariance(Solution solution) {
        double[] e = solution.model.cosine();
        double[] f = solution.model.sine();
        double both = solution.covariance(e, f);
        return new double[][] {{solution.covariance(e, e), both}, {both, solution.covariance(f, f)}};
    }
}
