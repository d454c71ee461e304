/**
 * What a shop's records teach about wear: how many holes a tap lasts between sharpenings, when the next is due, and how
 * likely it is that a tap on the bench comes through the next job.
 *
 * <p>Method note: docs/methods/wear-law.md. A run is what a tap does from sharp to its end; runs that still go on, or
 * that began before the records did, count as lasting at least so long. Life is lognormal; its middle and its scatter
 * start from common practice and move to the records, so that a few of them help already and many decide. Breakage is a
 * hazard that grows with the torque of a worn edge. Every figure is an estimate and says how many records it rests on.
 * Lengths of thread are counted in diameters inside, and told in holes of the usual depth.
 *
 * <p>Knows no clock, no database and no card.
 */
@NullMarked
package landfall.wear;

import org.jspecify.annotations.NullMarked;
