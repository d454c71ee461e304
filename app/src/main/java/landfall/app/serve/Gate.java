// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.UnauthorizedResponse;
import landfall.app.visitor.Visitor;
import landfall.store.people.Role;
import org.jspecify.annotations.Nullable;

/** Lets through who has the role that an address needs. */
final class Gate {
    private Gate() {}

    static void pass(Context ctx, @Nullable Role needed) {
        if (needed == null) {
            return;
        }
        Visitor visitor = Visitor.of(ctx);
        if (visitor.role() == null) {
            throw new UnauthorizedResponse("nobody has signed in");
        }
        if (!visitor.may(needed)) {
            throw new ForbiddenResponse("this needs the role " + needed.word());
        }
    }
}
