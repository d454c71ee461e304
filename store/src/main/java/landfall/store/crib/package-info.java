/**
 * The crib's records: things, their events, and the columns folded from them.
 *
 * <p>An event is added under the next number of its thing, in one transaction with the folded columns; who wrote first
 * wins, and the other is told what happened meanwhile. A request that carries a ticket is kept once, however often it
 * is sent. Whether an event can happen is judged by {@link landfall.history.History}, not here.
 */
@NullMarked
package landfall.store.crib;

import org.jspecify.annotations.NullMarked;
