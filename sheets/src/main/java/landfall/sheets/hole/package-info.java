/**
 * The sketches of a hole to be tapped: its section with the depths from the face and the tap in it, and what another
 * share of thread would cost and give.
 *
 * <p>Drawn from the engine's answer, to scale; computes no figure. Text stands where it fits, not where a formula puts
 * it: labels that would meet are moved apart and joined to their level by a thin line.
 */
@NullMarked
package landfall.sheets.hole;

import org.jspecify.annotations.NullMarked;
