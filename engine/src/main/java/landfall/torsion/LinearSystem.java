// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

/** Dense linear equations by elimination with row exchange. Takes the arrays over. */
final class LinearSystem {
    private final double[][] matrix;
    private final double[] right;

    LinearSystem(double[][] matrix, double[] right) {
        this.matrix = matrix;
        this.right = right;
    }

    double[] solve() {
        int n = right.length;
        for (int k = 0; k < n; k++) {
            bringUp(k);
            double[] pivotRow = matrix[k];
            double pivot = pivotRow[k];
            for (int i = k + 1; i < n; i++) {
                double[] row = matrix[i];
                double factor = row[k] / pivot;
                for (int j = k + 1; j < n; j++) {
                    row[j] -= factor * pivotRow[j];
                }
                right[i] -= factor * right[k];
            }
        }
        double[] solution = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = right[i];
            for (int j = i + 1; j < n; j++) {
                sum -= matrix[i][j] * solution[j];
            }
            solution[i] = sum / matrix[i][i];
        }
        return solution;
    }

    private void bringUp(int k) {
        int best = k;
        for (int i = k + 1; i < right.length; i++) {
            if (Math.abs(matrix[i][k]) > Math.abs(matrix[best][k])) {
                best = i;
            }
        }
        if (matrix[best][k] == 0) {
            throw new IllegalStateException("equations of the outline are singular at row " + k);
        }
        double[] row = matrix[k];
        matrix[k] = matrix[best];
        matrix[best] = row;
        double value = right[k];
        right[k] = right[best];
        right[best] = value;
    }
}
