/**
 * The regrind set-up: from a tap and a fixture to relief, rises, dial targets, gap and stock.
 *
 * <p>Frame: z along the axis from the point to the shank; θ from the cutting edge back over the land to the heel. Falls
 * are metal missing behind the edge: radial, axial, or square to the chamfer line in the axial plane. An axial rise
 * moves the tap towards its point, a radial rise moves its axis towards the wheel. Dial readings are zero at the edge,
 * taken while the tap is turned in its cutting sense, positive towards the point or towards the stylus.
 *
 * <p>Hazards: relief is small (tan α under 0.2) in every closed form here; a plate cam does not know where the land
 * ends, so gaps are counted from the end of its own rise. Right-handed throughout: hand is applied where an answer is
 * worded. Method notes: docs/methods/chamfer-relief.md, cam-and-gap.md, dial-targets.md, regrind-stock.md.
 */
@NullMarked
package landfall.grind;

import org.jspecify.annotations.NullMarked;
