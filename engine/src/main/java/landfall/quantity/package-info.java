/**
 * Quantities as small records: one stored unit each, factories for the others.
 *
 * <p>Stored units are those of the standards we compute by: mm, degree (as entered), N, N·m, N/mm², m/min, rev/min.
 * Inch and pound enter by their exact definitions. There is no algebra of dimensions: a product of kinds belongs in a
 * formula class, where it has a source. Rounding lives in {@link landfall.quantity.Rounding} and is applied only when a
 * figure is shown or a standard publishes a limit.
 */
@NullMarked
package landfall.quantity;

import org.jspecify.annotations.NullMarked;
