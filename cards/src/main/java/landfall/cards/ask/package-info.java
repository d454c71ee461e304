/**
 * The questions: each has one form, and lays the engine's record out as one answer.
 *
 * <p>Command line, page, HTTP and batch ask through {@link landfall.cards.ask.Question}; paper asks the same class for
 * the engine's record. The hand of a thread and the choice of units are applied here and nowhere else: the engine
 * computes right-handed and in millimetres.
 */
@NullMarked
package landfall.cards.ask;

import org.jspecify.annotations.NullMarked;
