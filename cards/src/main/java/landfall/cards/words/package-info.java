/**
 * The one place of the words that people read: labels of figures, helps of fields, titles, page texts.
 *
 * <p>An item of an answer is called by its noun and path ({@code thread.internal.pitch}), a field of a form by
 * {@code field.} and its path, a noun's one line of help by {@code noun.} and its name. Refusals and cautions stand
 * where the engine makes them, because their figures do. A test holds the file to the keys in use, both ways.
 */
@NullMarked
package landfall.cards.words;

import org.jspecify.annotations.NullMarked;
