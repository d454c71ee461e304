/**
 * Where a run begins.
 *
 * <p>{@link landfall.app.Main} hands the words of the command line to {@code landfall.app.command} and ends with its
 * exit code. It computes nothing and formats nothing.
 */
@NullMarked
package landfall.app;

import org.jspecify.annotations.NullMarked;
