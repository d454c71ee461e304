/**
 * What every screw thread has, whatever its family: profile, basic diameters, pitch, starts, hand, limits.
 *
 * <p>Families live in packages of their own below this one and know this package, not each other. Nothing here assumes
 * 60 degrees: angles, flats and depths are in {@link landfall.thread.Profile}. Diameters are basic and unrounded;
 * limits are rounded as the family's standard rounds them.
 */
@NullMarked
package landfall.thread;

import org.jspecify.annotations.NullMarked;
