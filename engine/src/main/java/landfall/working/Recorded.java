// SPDX-License-Identifier: Apache-2.0
package landfall.working;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A pen that keeps its steps, in order. A figure written again unchanged is one step; one that has changed since is
 * written again, so that every formula can be evaluated with the latest figure before it.
 */
public final class Recorded implements Pen {
    private final List<Step> steps = new ArrayList<>();
    private final Map<String, Step> latest = new HashMap<>();

    @Override
    public double write(Rule rule, double value) {
        Step step = new Step(rule, value);
        if (!step.equals(latest.put(rule.symbol(), step))) {
            steps.add(step);
        }
        return value;
    }

    public List<Step> steps() {
        return List.copyOf(steps);
    }
}
