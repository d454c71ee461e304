// SPDX-License-Identifier: Apache-2.0
package landfall.working;

/** Notes each step of a computation where it is made. */
@FunctionalInterface
public interface Pen {
    /** Keeps nothing: for sweeps, plots and kernels. */
    Pen NONE = (rule, value) -> value;

    /** Notes the step and returns its value. Angles are noted in degrees. */
    double write(Rule rule, double value);
}
