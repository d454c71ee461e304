/**
 * The drills that a shop has drawers for, by name and diameter.
 *
 * <p>Data, not a choice: which drill suits a hole is asked elsewhere. Number and letter diameters are the published
 * four-place inches; fraction drills are exact by their names. The table stands in {@code drills.csv} with its source
 * and with a column that says what was read and what was computed.
 */
@NullMarked
package landfall.drill;

import org.jspecify.annotations.NullMarked;
