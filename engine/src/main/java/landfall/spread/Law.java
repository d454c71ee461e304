// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

import java.util.List;

/** How an input varies. Every law is drawn by its quantile, so that one uniform draw makes one value. */
public sealed interface Law {
    /** The value that a share of {@code u} of all draws lies below, 0 < u < 1. */
    double at(double u);

    /** The value in the middle: what stands when nothing is off. */
    default double middle() {
        return at(0.5);
    }

    /** Into how many steps a curve along this input is divided; each holds as many draws as any other. */
    default int steps() {
        return 20;
    }

    /** The normal law. */
    record Normal(double mean, double deviation) implements Law {
        public Normal {
            if (!(deviation > 0)) {
                throw new IllegalArgumentException("standard deviation is " + deviation);
            }
        }

        @Override
        public double at(double u) {
            return mean + deviation * NormalCurve.quantile(u);
        }
    }

    /** Any value between two ends, each as likely as any other. */
    record Uniform(double low, double high) implements Law {
        public Uniform {
            if (!(high > low)) {
                throw new IllegalArgumentException("ends are " + low + " and " + high);
            }
        }

        @Override
        public double at(double u) {
            return low + (high - low) * u;
        }
    }

    /** One of several values, each as likely as any other: a list, or the steps of a range. */
    record Choices(List<Double> values) implements Law {
        public Choices {
            values = List.copyOf(values);
            if (values.isEmpty()) {
                throw new IllegalArgumentException("no values to choose from");
            }
        }

        @Override
        public double at(double u) {
            return values.get((int) (u * values.size()));
        }

        @Override
        public int steps() {
            return Math.min(values.size(), 1000);
        }
    }

    /**
     * As readings were found: between neighbouring readings in order of size the quantile runs straight, and none lies
     * outside them.
     *
     * @param values in order of size
     */
    record Readings(List<Double> values) implements Law {
        public Readings {
            values = values.stream().sorted().toList();
            if (values.size() < 2) {
                throw new IllegalArgumentException("too few readings: " + values.size());
            }
        }

        @Override
        public double at(double u) {
            double place = u * (values.size() - 1);
            int below = Math.min((int) place, values.size() - 2);
            double low = values.get(below);
            return low + (place - below) * (values.get(below + 1) - low);
        }
    }
}
