/**
 * What is marked on a tap's shank, and the limits of the tap that follow from it.
 *
 * <p>A mark fixes the tap's own pitch diameter, not the hole's: chamfer, alignment and material add to it. The major
 * diameter of inch taps follows a rule of the pitch alone; metric classes give only its least. Marks that a standard
 * does not define, such as 6HX, fix nothing: those limits must be taken from the tap. Method note:
 * docs/methods/tap-markings.md. Knows threads and taps, nothing of gauges.
 */
@NullMarked
package landfall.tap.mark;

import org.jspecify.annotations.NullMarked;
