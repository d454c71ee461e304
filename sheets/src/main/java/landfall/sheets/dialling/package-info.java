/**
 * Dial readings drawn: faces with the needle where it should stand and where it was read, the readings against the fit
 * over the land, and the edges round the tap.
 *
 * <p>Everything comes from the findings of {@code landfall.dialling}: here nothing is fitted and nothing judged, only
 * rounded for the eye. Lands are told apart by the shape of their marks. Readings keep the zero that the dial was set
 * to; what they should be is counted from the mean of the edges as fitted.
 */
@NullMarked
package landfall.sheets.dialling;

import org.jspecify.annotations.NullMarked;
