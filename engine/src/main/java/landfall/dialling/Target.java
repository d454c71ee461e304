// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * What the dial should read when the correction is made.
 *
 * @param land angle from the edge
 * @param reading zero at the edge
 */
public record Target(Angle land, Length reading) {}
