// SPDX-License-Identifier: Apache-2.0
package landfall.cards.readings;

import landfall.quantity.Length;

/**
 * One reading along the chamfer as written.
 *
 * @param line of the file, for refusals
 * @param along place on the chamfer, growing from the point towards the shank
 * @param value as read, sign as read
 */
public record AlongRow(int line, Length along, Length value) {}
