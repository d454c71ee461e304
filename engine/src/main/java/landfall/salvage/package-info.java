// SPDX-License-Identifier: Apache-2.0
/**
 * A tap has broken in the hole: how to get it out, ranked by size, depth and worth of the part.
 *
 * <p>The ways are data ({@code /salvage}), lore of the trade without a source; what speaks for and against each is said
 * in sentences, and the points only order them. Figures: what is left between the core of the stump and the thread, and
 * the hole of the wire insert that is the last resort. Knows nothing of why it broke: that is the question why. Method
 * note: docs/methods/broken-tap.md.
 */
@NullMarked
package landfall.salvage;

import org.jspecify.annotations.NullMarked;
