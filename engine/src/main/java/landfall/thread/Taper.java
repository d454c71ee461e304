// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import java.util.List;
import landfall.quantity.Length;

/**
 * A taper thread: its diameters at the planes where it is made and gauged, and the turns that fit.
 *
 * @param perLength growth of the diameter over the length, a pure number: 1/16
 * @param planes from the small end to the large
 * @param turns how far it screws in, and how far it may be out
 */
public record Taper(double perLength, List<Plane> planes, Turns turns) {
    public Taper {
        planes = List.copyOf(planes);
    }

    /**
     * One plane square to the axis.
     *
     * @param name what the trade calls it
     * @param at distance from the small end of the external thread; negative towards the wrench make-up of the hole
     */
    public record Plane(String name, Length at, Length major, Length pitch, Length minor) {}

    /**
     * Engagement, in turns where the trade counts turns.
     *
     * @param handTight length screwed in by hand
     * @param wrench length screwed further with a wrench
     * @param plus turns that the gauge may stand deeper
     * @param minus turns that it may stand out
     */
    public record Turns(Length handTight, Length wrench, double plus, double minus) {}
}
