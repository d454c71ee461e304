// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import landfall.quantity.Band;
import landfall.quantity.Length;

/**
 * A wear law in figures. Lives in holes of the usual depth; bands hold eight in ten.
 *
 * @param life of one tap from sharp to the wear limit
 * @param middle of many taps' lives
 * @param breaks broken taps for each run from sharp to due
 * @param depth the usual one
 */
public record Learned(Band life, Band middle, Band breaks, Length depth, Records records) {}
