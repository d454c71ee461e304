/**
 * What a tap has left in it, drawn from now to scrap: one line for each way of sharpening and one for the best of both,
 * a mark for each sharpening, all to one step so that lines can be laid against each other.
 *
 * <p>The counts are the engine's. A way that nothing known limits is drawn as a line without an end.
 */
@NullMarked
package landfall.sheets.life;

import org.jspecify.annotations.NullMarked;
