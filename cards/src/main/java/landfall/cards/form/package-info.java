/**
 * Forms: which fields a question or a card has, once for every way in.
 *
 * <p>Command line, page, HTTP, batch and card file all make one flat map of path and text;
 * {@link landfall.cards.form.Form} judges it, every field at once, and refuses what it doesn't know with the nearest
 * that it does. A {@link landfall.cards.form.Kind} knows how a text is read, which JSON schema it has and what a person
 * is told. Paths are those of the cards ({@code flutes.count}); options of a question have no dot.
 */
@NullMarked
package landfall.cards.form;

import org.jspecify.annotations.NullMarked;
