// SPDX-License-Identifier: Apache-2.0
/**
 * Drawings about choosing and knowing a tap: its blank to scale, what its marking says part by part, and what an
 * unmarked one may be.
 *
 * <p>Lengths of blanks are as lists have them; what no list in use gives (neck, length of the centres) is not drawn to
 * a figure and says so. A tap points to the left. Knows nothing of grinding.
 */
@NullMarked
package landfall.sheets.tap;

import org.jspecify.annotations.NullMarked;
