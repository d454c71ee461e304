// SPDX-License-Identifier: Apache-2.0
/**
 * What a worn or broken tap still is: which way to sharpen it, how many sharpenings are left, how its face is ground,
 * and whether the reground tap is right.
 *
 * <p>Frame and signs as in {@link landfall.grind}. A chamfer ground back by s along the axis costs s of thread length
 * and back taper times s of pitch diameter; a face ground back by an angle costs that angle of land, and pitch diameter
 * where the thread is relieved. The counts are geometry; what ends most taps sooner is chips in the full threads.
 * Method note: {@code docs/methods/regrind.md}.
 */
@NullMarked
package landfall.regrind;

import org.jspecify.annotations.NullMarked;
