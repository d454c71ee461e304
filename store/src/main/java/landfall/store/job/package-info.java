/**
 * Jobs: the holes of a drawing, and which of them are done.
 *
 * <p>A done mark is an event of the tap that cut the holes, written in one transaction with the line that it belongs
 * to. The job keeps no count of its own: what is done is what the taps' histories say, so that a correction there is
 * one here.
 */
@NullMarked
package landfall.store.job;

import org.jspecify.annotations.NullMarked;
