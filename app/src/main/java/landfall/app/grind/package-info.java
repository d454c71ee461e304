/**
 * The page {@code Grind}: how to set the fixture for a tap, as a sheet with dial faces and sketches.
 *
 * <p>It lays out the answer of the question {@code grind} and the drawings of {@code landfall.sheets}; it computes no
 * figure. The paper sheet is printed from the same answer.
 */
@NullMarked
package landfall.app.grind;

import org.jspecify.annotations.NullMarked;
