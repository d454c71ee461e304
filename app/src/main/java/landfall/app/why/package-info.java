/**
 * The page {@code Why}: from what is seen to its causes, the check that tells them apart, and the mend.
 *
 * <p>It lays out the answer of the question {@code why}; what a cause asks for next is a link to that question with the
 * same thread and tap.
 */
@NullMarked
package landfall.app.why;

import org.jspecify.annotations.NullMarked;
