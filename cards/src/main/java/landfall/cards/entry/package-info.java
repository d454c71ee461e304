/**
 * Quantities as people type them.
 *
 * <p>A bare decimal takes the unit of the call-out or card; fractions, leading points, thou and tenths are inch; bare
 * angles are degrees. A decimal comma is read where it can be nothing else and refused where it could part thousands.
 * What can mean two things is refused with both ways to write it; nothing is guessed. Findings carry no field: the form
 * puts it in.
 */
@NullMarked
package landfall.cards.entry;

import org.jspecify.annotations.NullMarked;
