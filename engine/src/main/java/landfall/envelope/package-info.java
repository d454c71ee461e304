/**
 * The numerical grind: what a wheel of real size really leaves on every land, before it touches the tap.
 *
 * <p>No closed form of {@code landfall.grind} is used. The wheel is a cylinder along the swivelled chamfer line; the
 * tap is turned under it and moved by its cam, lobe after lobe, return included. At every land angle and height the
 * deepest place that the wheel reached is kept. In a plane z = const the wheel is an ellipse, and an axial move is a
 * radial one times the tangent of the swivel, so each height is a plane problem; heights in between are interpolated.
 *
 * <p>Angles inside are radians, lengths mm. Hazards: the depth has a corner where the rise begins and ends, so the
 * deepest place is looked for in every bracket of the scan, not only the first. Method note:
 * docs/methods/numerical-grind.md.
 */
@NullMarked
package landfall.envelope;

import org.jspecify.annotations.NullMarked;
