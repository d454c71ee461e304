/**
 * Threads that move loads: Acme and stub Acme (29 degrees, inch), ISO trapezoidal Tr (30 degrees, metric).
 *
 * <p>Method note: docs/methods/power-threads.md. One to many starts: limits follow the pitch, advance follows the lead.
 * Acme 2G is confirmed by published rows; stub tolerances and the nut limits of Tr are remembered and say so. Knows no
 * other family.
 */
@NullMarked
package landfall.thread.power;

import org.jspecify.annotations.NullMarked;
