/**
 * What records teach, drawn: the wear of a tap over its holes, and what a hole costs against the wear limit.
 *
 * <p>Everything comes from the wear law and the costs; nothing is worked out here. Bands are hatched and named in
 * words.
 */
@NullMarked
package landfall.sheets.wear;

import org.jspecify.annotations.NullMarked;
