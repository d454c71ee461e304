/**
 * Cards: the tap, the fixture and the shop as JSON files with quantities as text.
 *
 * <p>A card is flattened to path and text, judged by its form like anything else that is typed, and made into engine
 * records; it is written back from what was typed. The JSON schemas in {@code docs/schema} are made from the forms.
 */
@NullMarked
package landfall.cards.card;

import org.jspecify.annotations.NullMarked;
