/** The tap in space: the page with its still pictures, and the bodies as files, before the grind and after it. */
@NullMarked
package landfall.app.body;

import org.jspecify.annotations.NullMarked;
