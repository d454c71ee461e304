/**
 * Many set-ups drawn: how a result spreads between its limits, what moves it, and how it runs along a field.
 *
 * <p>A view of a run's summary; it computes nothing. One ink: the limits are the accent, as what the program proposes
 * elsewhere.
 */
@NullMarked
package landfall.sheets.spread;

import org.jspecify.annotations.NullMarked;
