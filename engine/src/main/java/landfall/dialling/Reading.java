// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * One reading of a dial.
 *
 * @param land 1, 2, .. counted backwards over the lands
 * @param angle from that land's edge towards its heel
 * @param value as read, zero wherever the dial was set
 * @param place where the dial stood
 */
public record Reading(int land, Angle angle, Length value, Place place) {
    /** Angle round the tap from the edge of land 1, counted backwards over the lands. */
    Angle round(int flutes) {
        return Angle.ofDeg(360.0 * (land - 1) / flutes + angle.deg());
    }

    /** As a person finds it again in the list. */
    public String name() {
        return "land %d at %s deg".formatted(land, Numbers.plain(angle.deg()));
    }
}
