/**
 * Answers as small trees, and the two plainest views of them: JSON for programs, text of 80 columns for people.
 *
 * <p>A {@link landfall.cards.answer.Document} holds figures in metric units with the rule that made each; the choice of
 * inch or metric is made here, at printing, by exact conversion and without rounding again (JSON) or with the places of
 * {@link landfall.cards.answer.Unit} (text). Nothing here computes. Records of the engine carry no annotations: an
 * asker in {@code landfall.cards.ask} lays them out as items.
 */
@NullMarked
package landfall.cards.answer;

import org.jspecify.annotations.NullMarked;
