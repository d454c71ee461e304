// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

/** Heights at Chebyshev-Lobatto nodes over a length, and the weights that interpolate between them (barycentric). */
final class ChebyshevHeights {
    private final double length;
    private final double[] nodes;
    private final double[] barycentric;

    /** @param length in mm */
    ChebyshevHeights(int count, double length) {
        this.length = length;
        this.nodes = new double[count];
        this.barycentric = new double[count];
        for (int p = 0; p < count; p++) {
            nodes[p] = length * (1 - Math.cos(Math.PI * p / (count - 1))) / 2;
            double ends = p == 0 || p == count - 1 ? 0.5 : 1;
            barycentric[p] = p % 2 == 0 ? ends : -ends;
        }
    }

    int count() {
        return nodes.length;
    }

    double length() {
        return length;
    }

    double node(int p) {
        return nodes[p];
    }

    /** Shares of the nodes in the value at a height; their sum is 1. */
    double[] weights(double z) {
        double[] weights = new double[nodes.length];
        double sum = 0;
        for (int p = 0; p < nodes.length; p++) {
            double off = z - nodes[p];
            if (Math.abs(off) < 1e-12 * length) {
                weights = new double[nodes.length];
                weights[p] = 1;
                return weights;
            }
            weights[p] = barycentric[p] / off;
            sum += weights[p];
        }
        for (int p = 0; p < nodes.length; p++) {
            weights[p] /= sum;
        }
        return weights;
    }
}
