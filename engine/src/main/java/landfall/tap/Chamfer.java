// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * The chamfer, resolved.
 *
 * @param angle to the axis, at the cutting edge
 * @param threads pitches between the point and the basic major diameter
 */
public record Chamfer(Angle angle, Length pointDiameter, double threads) {}
