// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Length;

/**
 * Metal missing behind the edge.
 *
 * @param perRadian radial fall per radian of land angle
 * @param radial at the heel, z held
 * @param axial at the heel, radius held
 * @param square at the heel, square to the chamfer line in the axial plane
 */
public record Fall(Length perRadian, Length radial, Length axial, Length square) {}
