/**
 * ISO metric threads M, 60 degrees: call-outs, and limits of size in the positions e f g h outside, G H inside.
 *
 * <p>Method note: docs/methods/iso-metric-threads.md. The tolerances are the standard's tables, held as data; formula
 * and preferred number are their check, and stand in, with a caution, where the standard leaves a blank. Limits are
 * sums of whole micrometres. Knows no other family.
 */
@NullMarked
package landfall.thread.metric;

import org.jspecify.annotations.NullMarked;
