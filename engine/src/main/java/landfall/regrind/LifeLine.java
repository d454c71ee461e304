// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * The tap from now to scrap, by the plan with the most sharpenings.
 *
 * @param chamfers of that plan
 * @param faces of that plan
 * @param stations the tap now and after each sharpening
 */
public record LifeLine(int chamfers, int faces, List<Station> stations) {
    public LifeLine {
        stations = List.copyOf(stations);
    }

    /** How the tap came to a station. */
    public enum Way {
        NOW,
        CHAMFER,
        FACE
    }

    /**
     * The tap at one time of its life.
     *
     * @param threadLost of the thread length, from now
     * @param land what is left of it
     * @param pitchLost of the pitch diameter at the first full thread, from now
     */
    public record Station(Way way, Length threadLost, Angle land, Length pitchLost) {}
}
