/**
 * Torsion of a prism after Saint-Venant: how stiff a section is, and where and how high its shear stress peaks.
 *
 * <p>Method note: docs/methods/torsion.md. An outline is straight lines and arcs, taken exactly; the solver puts panels
 * on them, fine towards corners, and solves one boundary integral for the fall of Prandtl's function across the
 * outline. A section that repeats round its axis is solved on one of its repeats. Hazards: a sharp inner corner has no
 * finite stress and is refused; within a hundredth of the radius of an outer corner no peak is looked for (it is nil
 * there anyway). Twist along the axis, as of spiral flutes, is not in it. Knows no taps.
 */
@NullMarked
package landfall.torsion;

import org.jspecify.annotations.NullMarked;
