// SPDX-License-Identifier: Apache-2.0
package landfall.chip;

import landfall.quantity.Area;
import landfall.quantity.Length;

/**
 * What one tooth takes out of one groove.
 *
 * @param tooth 1 cuts first
 * @param radius of the slice's centroid
 */
public record Slice(int tooth, Area area, Length radius) {}
