// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import io.javalin.config.RoutesConfig;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.Handler;
import landfall.app.asked.AskedPages;
import landfall.app.crib.CribDoor;
import landfall.app.crib.CribPage;
import landfall.app.crib.ThingPage;
import landfall.app.cut.CutPage;
import landfall.app.dial.DialPage;
import landfall.app.gauge.GaugePage;
import landfall.app.grind.GrindPage;
import landfall.app.hole.HolePage;
import landfall.app.methods.MethodsPage;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.tap.IdentifyPage;
import landfall.app.tap.MarkingPage;
import landfall.app.tap.TapPage;
import landfall.app.thread.ThreadPage;
import landfall.app.today.TodayPage;
import landfall.app.why.WhyPage;

/** Every address of the server. A new page is one line here. */
final class Routes {
    private Routes() {}

    static void on(RoutesConfig routes, CribDoor door, boolean loopback) {
        Shell shell = new Shell();
        TodayPage today = new TodayPage(shell);
        page(routes, Place.TODAY.path(), today::show);
        page(routes, TodayPage.GO, today::go);
        page(routes, Place.THREAD.path(), new ThreadPage(shell)::show);
        page(routes, Place.TAP.path(), new TapPage(shell)::show);
        page(routes, MarkingPage.PATH, new MarkingPage(shell)::show);
        page(routes, IdentifyPage.PATH, new IdentifyPage(shell)::show);
        page(routes, Place.GAUGE.path(), new GaugePage(shell)::show);
        GrindPage grind = new GrindPage(shell);
        page(routes, Place.GRIND.path(), grind::show);
        routes.post(Place.GRIND.path() + "/open", grind::open);
        page(routes, Place.GRIND.path() + ".pdf", grind::pdf);
        DialPage dial = new DialPage(shell);
        page(routes, Place.GRIND.path() + "/dial", dial::show);
        page(routes, Place.GRIND.path() + "/dial.pdf", dial::pdf);
        routes.post(Place.GRIND.path() + "/dial", dial::post);
        routes.post(Place.GRIND.path() + "/dial/open", dial::open);
        page(routes, Place.HOLE.path(), new HolePage(shell)::show);
        CutPage cut = new CutPage(shell);
        page(routes, Place.CUT.path(), cut::show);
        routes.post(Place.CUT.path() + "/open", cut::open);
        page(routes, Place.CUT.path() + ".pdf", cut::pdf);
        page(routes, Place.WHY.path(), new WhyPage(shell)::show);
        AskedPages.of(shell).forEach(asked -> page(routes, asked.path(), asked::show));
        crib(routes, shell, door, loopback);
        MethodsPage methods = new MethodsPage(shell);
        page(routes, Place.METHODS.path(), methods::list);
        page(routes, Place.METHODS.path() + "/sources", methods::sources);
        page(routes, Place.METHODS.path() + "/{note}", methods::show);
        page(routes, "/assets/{digest}/{name}", AssetDoor::send);
        page(routes, "/api/{noun}", ApiDoor::get);
        routes.post("/api/{noun}", ApiDoor::post);
    }

    /** Records belong to people who have signed in, or to this machine alone. */
    private static void crib(RoutesConfig routes, Shell shell, CribDoor door, boolean loopback) {
        if (!loopback) {
            Handler closed = ctx -> {
                throw new ForbiddenResponse("the crib is open on this machine alone");
            };
            page(routes, Place.CRIB.path(), closed);
            page(routes, Place.CRIB.path() + "/{mark}", closed);
            return;
        }
        CribPage crib = new CribPage(shell, door);
        page(routes, Place.CRIB.path(), crib::list);
        routes.post(Place.CRIB.path(), crib::add);
        ThingPage thing = new ThingPage(shell, door);
        page(routes, Place.CRIB.path() + "/{mark}", thing::show);
        routes.post(Place.CRIB.path() + "/{mark}", thing::log);
    }

    /** A page answers to HEAD as to GET; the server leaves the body off. */
    private static void page(RoutesConfig routes, String path, Handler handler) {
        routes.get(path, handler);
        routes.head(path, handler);
    }
}
