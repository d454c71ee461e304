// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Angle;

/**
 * Relief of the chamfer at one radius.
 *
 * @param working in the plane square to the edge, left after the tap's advance is allowed for
 * @param ground static, in the plane square to the edge
 * @param loss that the advance takes away
 * @param transverse static, in the plane square to the axis, as ASME B94.9 defines it
 */
public record Relief(Angle working, Angle ground, Angle loss, Angle transverse) {}
