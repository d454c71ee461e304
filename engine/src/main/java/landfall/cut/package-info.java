/**
 * The cut: torque, breaking torque, margin, chip room, speed and time of one tap in one hole of one material.
 *
 * <p>Method notes: docs/methods/tapping-torque.md, docs/methods/torsion.md, docs/methods/chip-room.md,
 * docs/methods/cutting-speed.md. Torque is a band, never one figure, and is not to be trusted closer than its band
 * says: the evidence stands in the note, misses included. Forming taps and taper pipe taps are refused. Small tables of
 * factors are data under {@code /cut}. The engine's one answer is {@link landfall.cut.CutForecast}.
 */
@NullMarked
package landfall.cut;

import org.jspecify.annotations.NullMarked;
