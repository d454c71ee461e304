/**
 * Curves on paper: a frame, its ticks and grid, and places of values in it.
 *
 * <p>Knows nothing of what is plotted. Numbers are pure here: who plots gives them in the unit that the axis names.
 */
@NullMarked
package landfall.sheets.plot;

import org.jspecify.annotations.NullMarked;
