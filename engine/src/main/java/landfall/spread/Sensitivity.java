// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

/**
 * How much of a result's variance is due to one input, 1 for all of it, each with its sampling error.
 *
 * @param first by this input alone
 * @param firstError standard error of that
 * @param total with all that it does together with others
 * @param totalError standard error of that
 */
public record Sensitivity(double first, double firstError, double total, double totalError) {

    /**
     * Sums of the estimators of Jansen ({@code jansen-1999}) on the scheme of Saltelli and others
     * ({@code saltelli-2010}): rows A and B of independent draws, and A with one input from B.
     */
    static final class Sums {
        private final PairSums first;
        private final PairSums total;

        Sums() {
            this(new PairSums(), new PairSums());
        }

        Sums(PairSums first, PairSums total) {
            this.first = first;
            this.total = total;
        }

        /** @param mixed the result with this input from B and all others from A */
        void add(double a, double b, double mixed) {
            double variance = (a - b) * (a - b) / 2;
            first.add((b - mixed) * (b - mixed) / 2, variance);
            total.add((a - mixed) * (a - mixed) / 2, variance);
        }

        void merge(Sums next) {
            first.merge(next.first);
            total.merge(next.total);
        }

        PairSums first() {
            return first;
        }

        PairSums total() {
            return total;
        }

        boolean isEmpty() {
            return first.count() == 0;
        }

        Sensitivity found() {
            boolean still = first.ratio() == 0 && total.ratio() == 0;
            return new Sensitivity(still ? 0 : 1 - first.ratio(), first.error(), total.ratio(), total.error());
        }
    }
}
