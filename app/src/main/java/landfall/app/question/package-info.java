/**
 * The list of questions that command line, HTTP and pages serve alike.
 *
 * <p>A question is defined in {@code landfall.cards.ask}; it becomes a command, an address of the HTTP interface and a
 * batch by standing in this list.
 */
@NullMarked
package landfall.app.question;

import org.jspecify.annotations.NullMarked;
