// SPDX-License-Identifier: Apache-2.0
package landfall.material;

import landfall.quantity.Stress;

/**
 * Specific cutting pressure after Kienzle: force over chip area, {@code kc1.1·h^(−mc)} for a chip of thickness h in mm.
 *
 * @param atOneMm kc1.1, of a chip 1 mm thick
 * @param exponent mc
 */
public record CuttingPressure(Stress atOneMm, double exponent) {}
