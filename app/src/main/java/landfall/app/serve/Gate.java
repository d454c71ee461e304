// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import io.javalin.http.UnauthorizedResponse;
import landfall.app.people.Entrance;
import landfall.app.visitor.Visitor;
import landfall.store.StoreFault;
import landfall.store.people.Role;
import org.jspecify.annotations.Nullable;

/** Lets through who has the role that an address needs, and of forms only those that were written for the sender. */
final class Gate {
    /** Why it could not be told who asks. */
    static final String FAULT = "landfall.visitor-fault";

    private Gate() {}

    static void pass(Context ctx, @Nullable Role needed) {
        if (needed == null) {
            return;
        }
        StoreFault fault = ctx.attribute(FAULT);
        if (fault != null) {
            throw fault;
        }
        Visitor visitor = Visitor.of(ctx);
        if (visitor.role() == null) {
            throw new UnauthorizedResponse("nobody has signed in");
        }
        if (!visitor.may(needed)) {
            throw new ForbiddenResponse("role." + needed.word());
        }
        if (ctx.method() == HandlerType.POST && !Entrance.isOwnForm(ctx)) {
            throw new ForbiddenResponse("token");
        }
    }
}
