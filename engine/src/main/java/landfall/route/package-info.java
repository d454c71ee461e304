/**
 * A drawing's holes as one job: for each its drill, its tap and its gauge, what the shop lacks, and the operations in
 * the order that costs least when something goes wrong.
 *
 * <p>Method note: docs/methods/route-card.md. Drills come from {@code hole}, taps from {@code choice}, speeds from
 * {@code cut}, chances from {@code wear}, prices from {@code cost}; what stands here is only how they are put together,
 * and how long it takes. Every time and every price is an estimate and a band.
 *
 * <p>Knows no clock and no database: the day, the taps and the gauges come with the question.
 */
@NullMarked
package landfall.route;

import org.jspecify.annotations.NullMarked;
