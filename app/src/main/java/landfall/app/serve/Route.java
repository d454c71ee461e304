// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import landfall.store.people.Role;
import org.jspecify.annotations.Nullable;

/**
 * One address of the server with the role that it needs.
 *
 * @param role null for an address that is open to everybody
 */
record Route(HandlerType method, String path, @Nullable Role role, Handler handler) {
    @Override
    public String toString() {
        return method + " " + path + " " + (role == null ? "open" : role.word());
    }
}
