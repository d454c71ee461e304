// SPDX-License-Identifier: Apache-2.0
package landfall.cards.readings;

import java.util.Optional;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * One reading of a dial as written.
 *
 * @param line of the file, for refusals
 * @param land 1, 2, .. counted backwards over the lands
 * @param angle from that land's edge to its heel
 * @param value as read, sign as read
 * @param place where the dial stood, when the file says
 */
public record Row(int line, int land, Angle angle, Length value, Optional<Place> place) {}
