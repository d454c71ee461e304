// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * One land as the wheel leaves it, at the middle of the chamfer.
 *
 * @param land its number, counted backwards over the lands from 1
 * @param edge radius of the edge against the mean of all lands: + stands proud
 * @param fall radial fall at the heel
 * @param working relief near the edge, left at work, square to the edge
 * @param leastGap least radial gap to the cut surface over the land behind the first degree; negative drags
 * @param leastGapAt land angle of it
 * @param clipped how deep the lobe before has cut into this edge, below its own lobe's depth
 * @param trail angle by which the ground place trails the centre line near the edge
 * @param places radial fall and gap by land angle
 */
public record LandGround(
        int land,
        Length edge,
        Length fall,
        Angle working,
        Length leastGap,
        Angle leastGapAt,
        Length clipped,
        Angle trail,
        List<Place> places) {
    public LandGround {
        places = List.copyOf(places);
    }

    /** Radial fall behind the edge and radial gap to the cut surface at a land angle. */
    public record Place(Angle at, Length fall, Length gap) {}
}
