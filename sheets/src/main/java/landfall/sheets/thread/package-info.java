// SPDX-License-Identifier: Apache-2.0
/**
 * Drawings of threads to scale: screw and nut, the profile with the zones of its limits, the limits as stepped zones,
 * and the planes of a taper thread.
 *
 * <p>Everything drawn is of the sizes that the engine answers with; only the contour between them (flanks, flats, arcs
 * tangent to the flanks) is laid out here. Hazard: an open limit (null) is drawn as open, never closed with a figure.
 * Left hand is the mirror of right hand. Knows nothing of taps and gauges.
 */
@NullMarked
package landfall.sheets.thread;

import org.jspecify.annotations.NullMarked;
