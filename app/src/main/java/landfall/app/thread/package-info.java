/**
 * The page {@code Thread}: what a call-out allows.
 *
 * <p>It lays out the answer of the question {@code thread}; the standards' formulas live in the engine.
 */
@NullMarked
package landfall.app.thread;

import org.jspecify.annotations.NullMarked;
