/**
 * The figures of an answer as a page shows them: value, unit, the other system's value, trust and working.
 *
 * <p>A page asks for a figure by its path in the document ({@code setting.axial}); nothing here computes one. Values
 * are converted exactly from the document's metric figures and rounded only for showing. The working puts the numbers
 * of the steps before it into each formula, so that it can be followed with a pocket calculator.
 */
@NullMarked
package landfall.app.figure;

import org.jspecify.annotations.NullMarked;
