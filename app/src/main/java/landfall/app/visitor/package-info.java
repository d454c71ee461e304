/**
 * Who asks for a page: nobody in particular, a person who has signed in, or whoever sits at this machine.
 *
 * <p>Found anew for every request, so that a role that was changed counts at once.
 */
@NullMarked
package landfall.app.visitor;

import org.jspecify.annotations.NullMarked;
