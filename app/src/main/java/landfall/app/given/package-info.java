/**
 * What a person gives on a page: the fields of a question's form as cells, and what was wrong with them.
 *
 * <p>The fields, their helps and their kinds come from the question; which of them stand open and which under what was
 * assumed is the page's choice. No field of a form is left off a page.
 */
@NullMarked
package landfall.app.given;

import org.jspecify.annotations.NullMarked;
