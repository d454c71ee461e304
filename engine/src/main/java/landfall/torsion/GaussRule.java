// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

/**
 * Gauss-Legendre points and weights on -1 to 1, by Newton's method on the Legendre polynomial; and interpolation there.
 */
final class GaussRule {
    static final GaussRule FINE = new GaussRule(32);

    private final double[] nodes;
    private final double[] weights;
    private final double[] barycentric;

    GaussRule(int count) {
        nodes = new double[count];
        weights = new double[count];
        barycentric = new double[count];
        for (int i = 0; i < count; i++) {
            double x = -Math.cos(Math.PI * (i + 0.75) / (count + 0.5));
            double slope = 0;
            for (int turn = 0; turn < 50; turn++) {
                double before = 1;
                double value = x;
                for (int k = 2; k <= count; k++) {
                    double next = ((2 * k - 1) * x * value - (k - 1) * before) / k;
                    before = value;
                    value = next;
                }
                slope = count * (before - x * value) / (1 - x * x);
                double step = value / slope;
                x -= step;
                if (Math.abs(step) < 1e-15) {
                    break;
                }
            }
            nodes[i] = x;
            weights[i] = 2 / ((1 - x * x) * slope * slope);
            // barycentric weights of Gauss points, up to a factor that drops out
            barycentric[i] = (i % 2 == 0 ? 1 : -1) * Math.sqrt((1 - x * x) * weights[i]);
        }
    }

    int count() {
        return nodes.length;
    }

    double node(int i) {
        return nodes[i];
    }

    double weight(int i) {
        return weights[i];
    }

    /** Values at u of the polynomials that are 1 at one node and 0 at the others. */
    void basisAt(double u, double[] into) {
        double sum = 0;
        for (int j = 0; j < nodes.length; j++) {
            double apart = u - nodes[j];
            if (apart == 0) {
                java.util.Arrays.fill(into, 0);
                into[j] = 1;
                return;
            }
            into[j] = barycentric[j] / apart;
            sum += into[j];
        }
        for (int j = 0; j < nodes.length; j++) {
            into[j] /= sum;
        }
    }
}
