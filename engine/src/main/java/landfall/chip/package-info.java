/**
 * Chips of a cutting tap: what each tooth of the chamfer takes, where the chips go, and how long the flutes hold them.
 *
 * <p>Method note: docs/methods/chip-slices.md and docs/methods/chip-room.md. A groove is looked at in the axial plane:
 * z along the axis towards the shank, r from the axis. Tooth k removes what lies below its chamfer line and above the
 * line of the tooth before. Slices are exact polygons; their sum is the groove's area, and the sum of area times radius
 * is the groove's moment, whatever chamfer and flutes are. Straight chamfers only; the taper of pipe taps is refused by
 * {@code cut}. Knows nothing of forces.
 */
@NullMarked
package landfall.chip;

import org.jspecify.annotations.NullMarked;
