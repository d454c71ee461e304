/**
 * Tapped holes for wire thread inserts (STI): the nominal thread grown by the wire's own thread.
 *
 * <p>Method note: docs/methods/insert-holes.md. The hole's thread has the nominal pitch and a diameter that is larger
 * by 1.5 H; its tolerances are those of the nominal thread. Inside only. Knows the Unified and the metric family,
 * nothing of the rest.
 */
@NullMarked
package landfall.thread.insert;

import org.jspecify.annotations.NullMarked;
