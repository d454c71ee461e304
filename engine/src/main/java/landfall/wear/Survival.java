// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

/**
 * What may become of a tap in a job. Chances are shares of 1, all that is known and unknown of the law weighed.
 *
 * @param breaks before the job is done, if it is used to the end
 * @param due it reaches its wear limit before the job is done
 * @param lasts neither
 */
public record Survival(double breaks, double due, double lasts) {}
