/**
 * Figures as the eye wants them: inch to four places, metric to three, angles to a tenth; a true minus sign.
 *
 * <p>Rounds only for show, by {@link landfall.quantity.Rounding}; nothing is computed from what is printed.
 */
@NullMarked
package landfall.sheets.figure;

import org.jspecify.annotations.NullMarked;
