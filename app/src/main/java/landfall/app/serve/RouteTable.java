// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.List;
import landfall.store.people.Role;
import org.jspecify.annotations.Nullable;

/** The addresses of the server, written down one a line. None is served that does not stand here with its role. */
final class RouteTable {
    private final List<Route> routes = new ArrayList<>();

    /** A page for everybody. */
    void open(String path, Handler handler) {
        get(path, null, handler);
    }

    /** A form for everybody: it computes, and changes nothing that is kept. */
    void openForm(String path, Handler handler) {
        routes.add(new Route(HandlerType.POST, path, null, handler));
    }

    /** A page for those who have the role. */
    void page(String path, Role role, Handler handler) {
        get(path, role, handler);
    }

    /** A form of those who have the role: it changes what is kept. */
    void form(String path, Role role, Handler handler) {
        routes.add(new Route(HandlerType.POST, path, role, handler));
    }

    /** A page answers to HEAD as to GET; the server leaves the body off. */
    private void get(String path, @Nullable Role role, Handler handler) {
        routes.add(new Route(HandlerType.GET, path, role, handler));
        routes.add(new Route(HandlerType.HEAD, path, role, handler));
    }

    List<Route> routes() {
        return List.copyOf(routes);
    }

    /** Opens them; who lacks the role does not reach the handler. */
    void on(RoutesConfig config) {
        for (Route route : routes) {
            config.addHttpHandler(route.method(), route.path(), ctx -> {
                Gate.pass(ctx, route.role());
                route.handler().handle(ctx);
            });
        }
    }
}
