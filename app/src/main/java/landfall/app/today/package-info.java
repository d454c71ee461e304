/**
 * The page {@code Today}: where a day at the bench begins.
 *
 * <p>It computes nothing; its box sends a call-out to {@code Thread}, its examples lead to {@code Grind}.
 */
@NullMarked
package landfall.app.today;

import org.jspecify.annotations.NullMarked;
