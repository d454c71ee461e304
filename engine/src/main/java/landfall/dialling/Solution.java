// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

/** One model fitted to one list of values (mm). */
final class Solution {
    final LandModel model;
    final double[] coefficients;
    final double[] residuals;
    final double squares;
    final Spread spread;
    /** Found when first asked for: searches fit hundreds of times and never ask. */
    private double factor = Double.NaN;

    Solution(LandModel model, double[] values, double resolution) {
        this.model = model;
        coefficients = model.design.coefficients(values);
        residuals = new double[values.length];
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            residuals[i] = values[i] - dot(model.rows[i], coefficients);
            sum += residuals[i] * residuals[i];
        }
        squares = sum;
        spread = Spread.of(squares, model.design.spare(), resolution);
    }

    double value(double[] weights) {
        return dot(weights, coefficients);
    }

    double standard(double[] weights) {
        return spread.sigma() * Math.sqrt(Math.max(0, model.design.covariance(weights, weights)));
    }

    /** Covariance of two weighted sums, mm squared. */
    double covariance(double[] left, double[] right) {
        return spread.sigma() * spread.sigma() * model.design.covariance(left, right);
    }

    Fitted fitted(double[] weights) {
        return Fitted.ofMm(value(weights), standard(weights), factor());
    }

    double factor() {
        if (Double.isNaN(factor)) {
            factor = spread.factor();
        }
        return factor;
    }

    private static double dot(double[] left, double[] right) {
        double sum = 0;
        for (int j = 0; j < left.length; j++) {
            sum += left[j] * right[j];
        }
        return sum;
    }
}
