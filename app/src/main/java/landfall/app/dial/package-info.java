/**
 * The page of dial readings: typed or pasted in, held against what the dial should read, and what to turn.
 *
 * <p>It lays out the answer of the question {@code dial} and the drawings of {@code landfall.sheets.dialling}; it
 * computes no figure. One place of the dial at a time: where readings of several were given, the others are a link
 * away.
 */
@NullMarked
package landfall.app.dial;

import org.jspecify.annotations.NullMarked;
