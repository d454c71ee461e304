/**
 * Which tap suits a hole, and why.
 *
 * <p>Kinds of flute are ranked by what practice says of them, point by point, and every point is a sentence: a reason
 * or a caution. Nothing here is a standard's; what is common practice says so. Right-handed throughout: "right-hand
 * spiral" is the spiral of the thread's own hand, and the door words it for a left-hand thread. Knows holes, taps,
 * materials and the way chips go; nothing of torque. Method note: docs/methods/tap-choice.md.
 *
 * <p>{@link landfall.choice.TapRanking} does the same for the taps on record, with what their histories and the wear
 * law say of them; it knows no store. Method note: docs/methods/route-card.md.
 */
@NullMarked
package landfall.choice;

import org.jspecify.annotations.NullMarked;
