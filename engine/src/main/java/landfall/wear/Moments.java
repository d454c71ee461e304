// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

/** Mean and standard deviation of one side of a grid of log weights. */
record Moments(double mean, double sd) {
    /** @param across whether the axis runs along the rows of the grid */
    static Moments of(double[] axis, double[][] ln, boolean across) {
        double top = top(ln);
        double sum = 0;
        double first = 0;
        double second = 0;
        double about = axis[axis.length / 2];
        for (int j = 0; j < ln.length; j++) {
            for (int i = 0; i < ln[j].length; i++) {
                double weight = Math.exp(ln[j][i] - top);
                double x = (across ? axis[i] : axis[j]) - about;
                sum += weight;
                first += weight * x;
                second += weight * x * x;
            }
        }
        double mean = first / sum;
        return new Moments(about + mean, Math.sqrt(Math.max(0, second / sum - mean * mean)));
    }

    static double top(double[][] ln) {
        double top = Double.NEGATIVE_INFINITY;
        for (double[] row : ln) {
            for (double one : row) {
                top = Math.max(top, one);
            }
        }
        return top;
    }
}
