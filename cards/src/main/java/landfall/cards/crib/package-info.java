/**
 * What a person tells the crib: things with their cards, and what happened to them.
 *
 * <p>Each kind of thing and each kind of event is one form, which the command line, the pages, tables and the store
 * share. What is kept is what was typed; a bare figure gets the unit that it was read in, so that it reads the same for
 * ever. Knows no database.
 */
@NullMarked
package landfall.cards.crib;

import org.jspecify.annotations.NullMarked;
