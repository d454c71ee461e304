/**
 * A page for any question: all fields of its form, and the answer in sections as it comes.
 *
 * <p>For questions that have no layout of their own. Heading and helps are words of the question's noun.
 */
@NullMarked
package landfall.app.asked;

import org.jspecify.annotations.NullMarked;
