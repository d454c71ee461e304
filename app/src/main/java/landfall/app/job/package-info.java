/**
 * Jobs on pages, and what they need from the crib: holes typed or pasted, what is short, the route, done marks.
 *
 * <p>Nothing typed is lost on a refusal: the page comes back with every cell as it was and with what is amiss beside
 * it.
 */
@NullMarked
package landfall.app.job;

import org.jspecify.annotations.NullMarked;
