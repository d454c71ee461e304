/** Which build of the program is running: it stands on every sheet and in the foot of every page. */
@NullMarked
package landfall.app.build;

import org.jspecify.annotations.NullMarked;
