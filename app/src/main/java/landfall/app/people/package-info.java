/**
 * The pages by which people sign in and out, and by which those who keep the crib let others in.
 *
 * <p>Only these know of cookies and of passwords on their way to the store; no page shows or logs either.
 */
@NullMarked
package landfall.app.people;

import org.jspecify.annotations.NullMarked;
