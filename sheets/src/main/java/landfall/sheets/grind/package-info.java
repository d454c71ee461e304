/**
 * The drawings of a regrind set-up, all to scale: chamfer in the axial plane, the fall at the heel magnified, the tap
 * seen from its point with the cam's stroke round it, the fall over the land developed.
 *
 * <p>Signs as in the method note on relief: land angle counted from the cutting edge back over the land, falls positive
 * where metal is missing. A tap seen from its point turns anticlockwise to cut when it is right-handed; left-handed
 * views are the mirror. Nothing is computed here but places on paper: every figure shown is given.
 */
@NullMarked
package landfall.sheets.grind;

import org.jspecify.annotations.NullMarked;
