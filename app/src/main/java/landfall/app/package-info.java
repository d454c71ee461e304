/**
 * Where a run begins, and which build it is.
 *
 * <p>{@link landfall.app.Main} sends the first word of the command line to the package that answers it. It computes
 * nothing and formats nothing.
 */
@NullMarked
package landfall.app;

import org.jspecify.annotations.NullMarked;
