// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Angle;
import landfall.quantity.Length;

/** What a dial at a place should read at a land angle; zero at the edge, turned in the cutting sense. */
public record DialTarget(Place place, Angle land, Length reading) {}
