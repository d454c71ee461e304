/**
 * Many set-ups at once: what spread of the results follows from what varies, docs/methods/spread.md.
 *
 * <p>A {@link landfall.spread.Plan} names the laws of what varies, the limits of what is watched, how many set-ups and
 * the seed; a {@link landfall.spread.Model} answers rows of them. Draw k of input j is a pure function of seed, j and k
 * (a counter-based generator), set-ups are taken in blocks of {@link landfall.spread.Plan#BLOCK}, and blocks are merged
 * in their order: so threads, a stop and a resume, or another machine do not change a digit. Memory does not grow with
 * the number of set-ups. Figures are pure numbers here, each in the unit that its field or result is held in; it knows
 * no taps.
 */
@NullMarked
package landfall.spread;

import org.jspecify.annotations.NullMarked;
