/**
 * Gauging: plug and ring sizes, three wires, and odd-fluted taps in a V-anvil micrometer.
 *
 * <p>Gauge tolerances lie inside the product's limits. The lead term of the three wires is first order in tan²; above 5
 * degrees of lead the wire is laid on the helicoid numerically. A V-anvil multiplies the error of the crest diameter by
 * up to two: measure it first. Method notes: docs/methods/plug-gauges.md, three-wires.md, v-anvil.md. Knows threads,
 * nothing of wear or fixtures.
 */
@NullMarked
package landfall.gauge;

import org.jspecify.annotations.NullMarked;
