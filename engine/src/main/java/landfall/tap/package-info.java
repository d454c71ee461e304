/**
 * The tap in the hand: flutes, lands, chamfer, body, limits, as measured and judged.
 *
 * <p>Lengths are taken at the basic major diameter unless a name says otherwise. The land angle runs from the cutting
 * edge back to the heel, about the axis. The chamfer angle is between the chamfer and the axis, in the axial plane, at
 * the cutting edge (ASME B94.9). A figure that was not measured is null here, never a made-up one. Knows threads; knows
 * nothing of fixtures, holes or wear laws.
 */
@NullMarked
package landfall.tap;

import org.jspecify.annotations.NullMarked;
