// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

/**
 * A step of the working.
 *
 * @param numbers the formula with the numbers put in; empty when nothing was put in
 */
public record StepView(
        String symbol, String formula, String numbers, String result, String means, String source, String trust) {

    /** A figure that was given or read from a table has no formula to follow. */
    public boolean isComputed() {
        return !numbers.isEmpty();
    }
}
