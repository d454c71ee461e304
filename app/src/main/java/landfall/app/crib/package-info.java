/**
 * The crib as the command line, programs and pages see it: things, their events and what follows, as text and as JSON.
 *
 * <p>Shows what {@code store} keeps and computes nothing of its own.
 */
@NullMarked
package landfall.app.crib;

import org.jspecify.annotations.NullMarked;
