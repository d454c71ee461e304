/**
 * Unified inch threads, 60 degrees: call-outs from 0-80 to 6 in, and their limits of size in classes 1A to 3B.
 *
 * <p>Method note: docs/methods/unified-threads.md. All sums are made in whole units of 1e-8 in, because the standard
 * speaks of decimals and a binary fraction falls on the wrong side of a half. Only the three roots of the tolerance
 * formula are binary, and they are rounded to six places before they are added. Knows no other family.
 */
@NullMarked
package landfall.thread.unified;

import org.jspecify.annotations.NullMarked;
