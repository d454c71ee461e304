// SPDX-License-Identifier: Apache-2.0
/**
 * Dialling in: from dial readings to what is wrong with the set-up and what to turn, which way and by how much.
 *
 * <p>The model is {@code y = c_land + k s(theta) + E cos T + F sin T} with {@code T = 360 (land - 1)/N + theta}, the
 * land heights summing to nothing; see {@code docs/methods/dialling.md}. Land 1, 2, .. are counted backwards over the
 * lands, the land angle {@code theta} from that land's edge to its heel, turned in the cutting sense. Readings are
 * positive axially towards the point, radially or squarely towards the stylus, and keep the sign as read.
 *
 * <p>Hazards: on lands of 40 degrees the run-out and the land heights look nearly alike, so fitting both widens the
 * uncertainty of both fourfold; fitting the run-out alone makes it wrong when the lands differ. Both fits are answered.
 * A hypot is never negative, so an eccentricity near zero has no direction. No reading is ever dropped in silence.
 */
@NullMarked
package landfall.dialling;

import org.jspecify.annotations.NullMarked;
