// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import landfall.envelope.ChamferGround;
import landfall.quantity.Angle;
import landfall.quantity.Length;

/** The surface of the chamfer behind its edges. */
public sealed interface ChamferForm {

    /**
     * Radius about the axis.
     *
     * @param line radius of the chamfer's line at that height
     * @param land from 0, counted backwards over the lands
     */
    Length radius(Length line, int land, Angle theta, Length fromPoint);

    /** Radial fall for each radian of land, about. */
    Length perRadian();

    /** Falls evenly behind the edge: static radial fall for each radian of land. */
    record Even(Length perRadian) implements ChamferForm {
        @Override
        public Length radius(Length line, int land, Angle theta, Length fromPoint) {
            return Length.ofMm(line.mm() - perRadian.mm() * theta.rad());
        }
    }

    /** As a wheel leaves it. */
    record Ground(ChamferGround ground, Length perRadian) implements ChamferForm {
        @Override
        public Length radius(Length line, int land, Angle theta, Length fromPoint) {
            return ground.radius(land, theta, fromPoint);
        }
    }
}
