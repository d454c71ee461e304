/**
 * Dial readings as people keep them: a table in a file, or pasted into a page.
 *
 * <p>Only what is written is read here; whether it can be fitted is the engine's to say. Signs stay as read. Lands are
 * counted backwards from land 1, angles from each land's own edge.
 */
@NullMarked
package landfall.cards.readings;

import org.jspecify.annotations.NullMarked;
