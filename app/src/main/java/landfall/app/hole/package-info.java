/**
 * The page {@code Hole}: which drill, how deep, and what the thread will hold, beside the hole in section.
 *
 * <p>It lays out the answer of the question {@code hole} and the drawings of {@code landfall.sheets.hole}; it computes
 * no figure.
 */
@NullMarked
package landfall.app.hole;

import org.jspecify.annotations.NullMarked;
