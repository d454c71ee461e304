/**
 * Where a person's own data lie, outside of the program's folder.
 *
 * <p>It must not know what is kept there.
 */
@NullMarked
package landfall.app.folder;

import org.jspecify.annotations.NullMarked;
