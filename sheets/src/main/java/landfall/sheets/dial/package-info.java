/**
 * Dial faces with the needle where it should stand, and where it was read.
 *
 * <p>Drawn as the dial that the shop has: division from the fixture card, a hundred divisions a turn unless said
 * otherwise, a small hand that counts turns. Convention: a positive reading pushes the plunger in and turns the needle
 * clockwise, which is called forward; positive is axially towards the tap's point, radially and squarely towards the
 * stylus.
 *
 * <p>{@link landfall.sheets.dial.DialRow} picks the faces for a set-up; the faces themselves know no taps.
 */
@NullMarked
package landfall.sheets.dial;

import org.jspecify.annotations.NullMarked;
