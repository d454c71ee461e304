/**
 * Pipe threads: NPT and NPTF (taper, 60 degrees), G (parallel, 55 degrees), R, Rc and Rp (55 degrees, taper and
 * parallel).
 *
 * <p>Method note: docs/methods/pipe-threads.md. Taper threads answer with their diameters at the planes where they are
 * gauged and with turns, because depth sets their size. Whoever reads these figures must see the caution that a gauge
 * that fits proves no joint. Knows no other family.
 */
@NullMarked
package landfall.thread.pipe;

import org.jspecify.annotations.NullMarked;
