// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

import java.util.function.Consumer;

/** What is asked of every set-up. It is called by several threads at once. */
@FunctionalInterface
public interface Model {
    /**
     * Answers set-ups.
     *
     * @param inputs by input, then by set-up
     * @param results by result, then by set-up; not a number where this set-up has none
     * @param refused takes the reason of each set-up that was refused
     */
    void answer(double[][] inputs, double[][] results, Consumer<String> refused);
}
