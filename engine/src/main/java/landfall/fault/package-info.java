/**
 * How things go wrong, and how a doubt travels with a figure.
 *
 * <p>{@link landfall.fault.OutOfRange}: a formula asked outside its range. {@link landfall.fault.Finding}: what is
 * wrong with one field that a person typed; {@link landfall.fault.Answer} carries all of them at once.
 * {@link landfall.fault.Caution}: a true but doubtful or dangerous result. Nothing here clamps, guesses or logs.
 */
@NullMarked
package landfall.fault;

import org.jspecify.annotations.NullMarked;
