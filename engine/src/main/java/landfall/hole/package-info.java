/**
 * The hole before it is tapped: which drill, how deep, and what the thread in it will hold.
 *
 * <p>Everything is counted from the basic major diameter and the pitch, unrounded, in millimetres; limits come from the
 * call-out as its standard rounds them. A share of thread is against the old full depth 0.6495 P a side at 60 degrees,
 * what a shop means by "75 % thread". A drilled hole is larger than its drill, by how much is an estimate: a band.
 * Knows drills, threads and materials; nothing of taps, chips or torque beyond the kind of flute that says where chips
 * go. Method notes: docs/methods/thread-engagement.md, tap-drill.md, thread-strength.md.
 */
@NullMarked
package landfall.hole;

import org.jspecify.annotations.NullMarked;
