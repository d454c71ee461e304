// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

import landfall.quantity.Angle;
import landfall.quantity.Length;

/** A place in the section, from its axis. */
public record Place(Length x, Length y) {
    public static final Place AXIS = ofMm(0, 0);

    static Place ofMm(double x, double y) {
        return new Place(Length.ofMm(x), Length.ofMm(y));
    }

    public static Place polar(Length radius, Angle angle) {
        return ofMm(radius.mm() * Math.cos(angle.rad()), radius.mm() * Math.sin(angle.rad()));
    }

    /** Distance from the axis. */
    public Length radius() {
        return Length.ofMm(Math.hypot(x.mm(), y.mm()));
    }

    /** Angle about the axis, from the x axis counterclockwise. */
    public Angle angle() {
        return Angle.ofRad(Math.atan2(y.mm(), x.mm()));
    }
}
