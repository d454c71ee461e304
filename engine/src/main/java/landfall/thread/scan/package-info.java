/**
 * Reads a call-out character by character.
 *
 * <p>{@link landfall.thread.scan.Cursor} walks the text as it was typed, so that a refusal can name the character;
 * look-alikes (a multiplication sign, long dashes, curled quotes, lower case) read as their plain form. Numbers are
 * decimal, to eight places, in whole units of 1e-8: sizes never pass through binary fractions on their way in.
 * {@link landfall.thread.scan.Misread} is how a reader gives up; it costs no stack trace. Knows no family.
 */
@NullMarked
package landfall.thread.scan;

import org.jspecify.annotations.NullMarked;
