// SPDX-License-Identifier: Apache-2.0
/**
 * Drawings of gauging to scale: gauges as zones beside the limits they stand for, wires in a thread, a tap with an odd
 * number of flutes in a V-anvil.
 *
 * <p>Sizes are the engine's. A wire is drawn where it touches both flanks of the groove, without the lead term, which
 * is less than a line's width. Right-handed and left-handed threads gauge alike. Knows nothing of wear.
 */
@NullMarked
package landfall.sheets.gauge;

import org.jspecify.annotations.NullMarked;
