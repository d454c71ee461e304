/**
 * Many set-ups at once, as people tell it: which question, what is given, what varies and how, what is watched.
 *
 * <p>Any field of a question that answers in figures can vary, and any figure of its answer can be watched, under the
 * same names as everywhere: {@link landfall.cards.spread.SpreadWish} holds the texts,
 * {@link landfall.cards.spread.SpreadSetup} what was judged of them. A set-up is answered by the question's own asker;
 * a few closed forms have a faster way that gives the same. docs/methods/spread.md says how figures come about,
 * docs/spread.md how a run is written.
 */
@NullMarked
package landfall.cards.spread;

import org.jspecify.annotations.NullMarked;
