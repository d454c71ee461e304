// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * The linear algebra of one set of reading places, worked once and used for any readings there.
 *
 * <p>Columns are scaled to unit length before the singular values are taken, so that the condition number speaks of the
 * places and not of radians against millimetres. p = (X'X)^-1 X'y, cov = sigma^2 (X'X)^-1.
 */
final class Design {
    /**
     * Beyond this condition number of the scaled columns the terms are told apart only by the last digits of the
     * readings: with land heights fitted, all angles within about three degrees.
     */
    static final double WORST_CONDITION = 100;

    final int readings;
    final int terms;
    final double condition;
    private final double[][] solver;
    private final double[][] covariance;
    private final double[] leverage;

    Design(double[][] rows) {
        readings = rows.length;
        terms = rows[0].length;
        solver = new double[terms][readings];
        covariance = new double[terms][terms];
        leverage = new double[readings];
        if (readings < terms) {
            condition = Double.POSITIVE_INFINITY;
            return;
        }
        RealMatrix matrix = MatrixUtils.createRealMatrix(rows);
        double[] length = new double[terms];
        for (int j = 0; j < terms; j++) {
            length[j] = matrix.getColumnVector(j).getNorm();
            if (length[j] > 0) {
                matrix.setColumnVector(j, matrix.getColumnVector(j).mapDivide(length[j]));
            }
        }
        SingularValueDecomposition svd = new SingularValueDecomposition(matrix);
        double[] singular = svd.getSingularValues();
        double least = singular[terms - 1];
        condition = least > 1e-12 * singular[0] ? singular[0] / least : Double.POSITIVE_INFINITY;
        if (isSound()) {
            fill(svd, length);
        }
    }

    private void fill(SingularValueDecomposition svd, double[] length) {
        double[] singular = svd.getSingularValues();
        RealMatrix u = svd.getU();
        RealMatrix v = svd.getV();
        for (int m = 0; m < terms; m++) {
            for (int i = 0; i < readings; i++) {
                double um = u.getEntry(i, m);
                leverage[i] += um * um;
                for (int j = 0; j < terms; j++) {
                    solver[j][i] += v.getEntry(j, m) * um / (singular[m] * length[j]);
                }
            }
            for (int j = 0; j < terms; j++) {
                for (int l = 0; l < terms; l++) {
                    covariance[j][l] +=
                            v.getEntry(j, m) * v.getEntry(l, m) / (singular[m] * singular[m] * length[j] * length[l]);
                }
            }
        }
    }

    /** Whether the terms can be told apart from readings at these places. */
    boolean isSound() {
        return condition <= WORST_CONDITION;
    }

    int spare() {
        return readings - terms;
    }

    double[] coefficients(double[] values) {
        double[] found = new double[terms];
        for (int j = 0; j < terms; j++) {
            for (int i = 0; i < readings; i++) {
                found[j] += solver[j][i] * values[i];
            }
        }
        return found;
    }

    /** Variance of a weighted sum of the coefficients, over sigma squared; the covariance of two such sums. */
    double covariance(double[] left, double[] right) {
        double sum = 0;
        for (int j = 0; j < terms; j++) {
            for (int l = 0; l < terms; l++) {
                sum += left[j] * covariance[j][l] * right[l];
            }
        }
        return sum;
    }

    /** Pull of reading i on its own fitted figure, 0 to 1. */
    double leverage(int i) {
        return leverage[i];
    }
}
