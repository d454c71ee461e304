/**
 * What has happened to a thing of the crib, and what follows from it.
 *
 * <p>Events are only added to. The state of a tap, a fixture, a wheel, a drill or a gauge is folded from its events and
 * from nothing else; an event is taken back by a correcting event, which can be taken back in its turn. Fields keep
 * what was told: a count may be rough, a torque may be told by feel, and what nobody told stays unknown.
 *
 * <p>Knows no clock, no database and no card: times and texts come with the events.
 */
@NullMarked
package landfall.history;

import org.jspecify.annotations.NullMarked;
