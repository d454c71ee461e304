/**
 * The drills that a shop has drawers for, by name and diameter.
 *
 * <p>Data, not a choice: which drill suits a hole is asked elsewhere. Number and letter diameters are the published
 * four-place inches; fraction drills are exact by their names; the steps of the metric series are remembered. The
 * tables stand in {@code drills.csv} and {@code metric-drills.csv} with their sources and with a column that says what
 * was read, computed or remembered.
 */
@NullMarked
package landfall.drill;

import org.jspecify.annotations.NullMarked;
