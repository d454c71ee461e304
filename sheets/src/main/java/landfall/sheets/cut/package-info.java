/**
 * The sketches of a cut, to scale: what each tooth takes, how the torque grows against what breaks the tap, and where
 * the section of the tap is strained.
 *
 * <p>Drawn from the engine's forecast; computes no figure of its own. One ink in steps instead of colours, and every
 * step has its number beside it, so that a black-and-white print says the same.
 */
@NullMarked
package landfall.sheets.cut;

import org.jspecify.annotations.NullMarked;
