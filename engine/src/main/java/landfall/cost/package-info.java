/**
 * What sharpening costs and saves: the wear limit at which a hole costs least, sharpen or replace, taps gathered into
 * one sitting, what to buy before the shelf is bare.
 *
 * <p>Method note: docs/methods/cost-per-hole.md. Lives and breakage come from the wear law and are estimates, and so is
 * every cost that stands on them. Where the part is dear, what a broken tap spoils decides and not the tap. Money is in
 * whatever the shop pays in; nothing is converted, and two currencies in one question are refused.
 *
 * <p>Knows no clock and no database: periods and counts come with the question.
 */
@NullMarked
package landfall.cost;

import org.jspecify.annotations.NullMarked;
