/**
 * From what is seen on a thread or a tap to why, with the check that tells causes apart and the mend.
 *
 * <p>Symptoms and causes are data ({@code /symptom}), lore of the trade without a source. What is known of this very
 * tap, hole and material moves a cause up or down; the figures for that are written as steps like any other. Nothing
 * here is certain: an order to look in, not a verdict. Method note: docs/methods/symptoms.md.
 */
@NullMarked
package landfall.symptom;

import org.jspecify.annotations.NullMarked;
