/**
 * The page {@code Cut}: whether a tap will cut a hole, how fast, and when its chips must come out; and its sheet.
 *
 * <p>It lays out the answer of the question {@code cut} and the drawings of {@code landfall.sheets.cut}; it computes no
 * figure. The tapping sheet is printed from the same answer.
 */
@NullMarked
package landfall.app.cut;

import org.jspecify.annotations.NullMarked;
