// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.Tap;
import landfall.working.Pen;

/**
 * What the relief formulas need of a tap.
 *
 * @param midRadius radius at the middle of the chamfer
 * @param leadFelt lead that the relief loses to, spiral flutes allowed for
 * @param land angle, edge to heel
 */
public record ChamferPlace(Length midRadius, Length pointRadius, Angle kappa, Length leadFelt, Angle land) {

    static ChamferPlace of(Tap tap, Angle land, Pen pen) {
        var chamfer = tap.cutting().chamfer().resolve(tap.thread(), pen);
        Length mid = ChamferRelief.midRadius(tap.thread().major(), chamfer, pen);
        Length felt = ChamferRelief.leadFelt(tap.thread(), tap.flutes(), pen);
        return new ChamferPlace(mid, chamfer.pointDiameter().times(0.5), chamfer.angle(), felt, land);
    }

    /** Radius at the large end: what the middle lies half way from. */
    public Length largeRadius() {
        return midRadius.times(2).minus(pointRadius);
    }
}
