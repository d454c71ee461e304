/**
 * What a measured tap, hole or screw is worth against its limits.
 *
 * <p>A figure is in its limits when all of its uncertainty is, out when all of it is out, and borderline between: then
 * the gauge or a better measurement decides. What a tap will cut is an estimate: from its own size, held stiffly, to
 * that and the run-out of its chamfer. Method note: docs/methods/verdicts.md. Knows gauges and marks of taps, nothing
 * of grinding.
 */
@NullMarked
package landfall.verdict;

import org.jspecify.annotations.NullMarked;
