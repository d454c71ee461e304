/**
 * The tap as a body: its surface from the card, as a closed mesh with the bound of its error.
 *
 * <p>Frame: z along the axis from the point to the shank; φ about it, from the edge of land 1 at the point back over
 * the lands, which for a right-hand thread is counterclockwise seen from the shank's end; x = r·cos φ, y = r·sin φ.
 * Millimetres and radians inside. The thread runs as z = u + L·φ/2π, so rows of constant u follow it and its corners
 * lie on rows. Every body is right-handed; a left-hand tap is its mirror image, made at the door. Method note:
 * docs/methods/tap-body.md.
 */
@NullMarked
package landfall.solid;

import org.jspecify.annotations.NullMarked;
