/**
 * Blanks of taps: overall and thread length, shank and square, as lists in use give them.
 *
 * <p>Common practice, no source: to 3/8 in the shank is a little over nominal size, from 7/16 in it lies under the
 * root, so that such a tap can follow its own hole. Rows that are remembered carry that mark.
 */
@NullMarked
package landfall.tap.blank;

import org.jspecify.annotations.NullMarked;
