// SPDX-License-Identifier: Apache-2.0
package landfall.working;

import java.util.ArrayList;
import java.util.List;

/** A pen that keeps its steps, in order. A figure written twice with one value is one step. */
public final class Recorded implements Pen {
    private final List<Step> steps = new ArrayList<>();

    @Override
    public double write(Rule rule, double value) {
        Step step = new Step(rule, value);
        if (!steps.contains(step)) {
            steps.add(step);
        }
        return value;
    }

    public List<Step> steps() {
        return List.copyOf(steps);
    }
}
