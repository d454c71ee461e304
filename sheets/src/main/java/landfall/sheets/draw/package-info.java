/**
 * Drawings as SVG 1.1: paper, ink, thick and thin lines, hatching, dimensions.
 *
 * <p>One writer for screen, paper and PDF. Coordinates are millimetres on paper, y downwards, and are written rounded
 * to 0.01. Hazards: the renderer that puts a drawing into a PDF drops the whole drawing at one attribute it does not
 * know, so nothing newer than SVG 1.1 is written: no markers, no patterns, no clip paths, no baselines but the
 * alphabetic one. Hatching is clipped here, arrowheads are paths, text is placed by the metrics of the bundled font.
 *
 * <p>Knows nothing of taps, fixtures or dials.
 */
@NullMarked
package landfall.sheets.draw;

import org.jspecify.annotations.NullMarked;
