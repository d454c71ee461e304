/**
 * What measurements in the shop do to forecasts: a measured torque narrows the torque band of its material, and the
 * chance that a hole gauges GO comes from the shop's own holes.
 *
 * <p>Method note: docs/methods/feedback.md. Both begin with what holds before any measurement and let it go as
 * measurements come; both are closed forms with the working written down. One measurement shifts a little, ten decide.
 * Knows no tap card and no clock.
 */
@NullMarked
package landfall.feedback;

import org.jspecify.annotations.NullMarked;
