/**
 * British inch threads BSW and BSF (55 degrees, rounded) and the small BA threads (47.5 degrees).
 *
 * <p>Method note: docs/methods/whitworth-and-ba.md. Basic sizes are solid; the tolerance rules of BS 84 are remembered,
 * those of BS 93 read from a poor scan, and every answer says so. Knows no other family.
 */
@NullMarked
package landfall.thread.whitworth;

import org.jspecify.annotations.NullMarked;
