/**
 * The one reader of call-outs, whatever the family.
 *
 * <p>It looks at how the text begins, hands it to the family's own reader, and turns a misreading into a refusal that
 * names the character, what was expected there, and the nearest call-outs that are right. The only package of threads
 * that knows all families. It never throws on any text.
 */
@NullMarked
package landfall.thread.callout;

import org.jspecify.annotations.NullMarked;
