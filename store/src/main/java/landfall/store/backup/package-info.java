/**
 * A whole crib in one file and back, from either kind of store into either kind.
 *
 * <p>Compressed text: one line of JSON for the head, one for each thing and each event, and a last one with their
 * numbers and the SHA-256 of all lines between, so that a file that was cut short or changed is refused before anything
 * of it is kept.
 */
@NullMarked
package landfall.store.backup;

import org.jspecify.annotations.NullMarked;
