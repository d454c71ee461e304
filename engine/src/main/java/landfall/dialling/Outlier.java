// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

/**
 * A reading that the others do not bear out.
 *
 * @param reading as typed
 * @param studentised its distance from a fit without it, over the standard deviation of that distance
 * @param limit what one set in twenty would exceed by chance with its worst reading
 */
public record Outlier(Reading reading, double studentised, double limit) {}
