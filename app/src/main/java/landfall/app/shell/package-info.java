/**
 * What every page shares: its frame, the places of the program, the files that pages load.
 *
 * <p>A page's own handler, form and template lie in the page's package. This one knows no page and no question.
 */
@NullMarked
package landfall.app.shell;

import org.jspecify.annotations.NullMarked;
