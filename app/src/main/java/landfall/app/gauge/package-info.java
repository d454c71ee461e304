// SPDX-License-Identifier: Apache-2.0
/**
 * The page {@code Gauge}: gauges, wires and the V-anvil drawn beside their figures, boxes for what was read, and the
 * verdict.
 *
 * <p>It lays out the answer of the question {@code gauge}; which way round a reading is computed is settled by which
 * box is filled.
 */
@NullMarked
package landfall.app.gauge;

import org.jspecify.annotations.NullMarked;
