/**
 * How a figure shows its working.
 *
 * <p>A printed formula is a constant {@link landfall.working.Rule}; a computation writes each figure with
 * {@code pen.write(RULE, value)}, which returns the value, so that formula and code stand on one line and the formula
 * stands once. {@link landfall.working.Pen#NONE} costs nothing; {@link landfall.working.Recorded} keeps the steps. A
 * test evaluates every printed formula with the steps before it and compares.
 */
@NullMarked
package landfall.working;

import org.jspecify.annotations.NullMarked;
