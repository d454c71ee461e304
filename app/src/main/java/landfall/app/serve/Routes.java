// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import static landfall.store.people.Role.KEEP;
import static landfall.store.people.Role.LOOK;
import static landfall.store.people.Role.USE;

import io.javalin.http.sse.SseHandler;
import landfall.app.api.OpenApi;
import landfall.app.asked.AskedPages;
import landfall.app.body.BodyPage;
import landfall.app.crib.CribApi;
import landfall.app.crib.CribDoor;
import landfall.app.crib.CribPage;
import landfall.app.crib.DuePage;
import landfall.app.crib.ThingPage;
import landfall.app.cut.CutPage;
import landfall.app.dial.DialPage;
import landfall.app.gauge.GaugePage;
import landfall.app.grind.GrindPage;
import landfall.app.hole.HolePage;
import landfall.app.job.JobApi;
import landfall.app.job.JobPage;
import landfall.app.job.KeptJobPage;
import landfall.app.methods.MethodsPage;
import landfall.app.people.OwnPage;
import landfall.app.people.PeoplePage;
import landfall.app.people.SignInPage;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.spread.Runs;
import landfall.app.spread.SpreadPage;
import landfall.app.spread.WishForm;
import landfall.app.tap.IdentifyPage;
import landfall.app.tap.MarkingPage;
import landfall.app.tap.TapPage;
import landfall.app.thread.ThreadPage;
import landfall.app.today.TodayPage;
import landfall.app.why.WhyPage;
import landfall.sheets.body.BodyFormat;

/**
 * Every address of the server with the role that it needs. A new page is one line here: {@code open} for what computes
 * and keeps nothing, {@code page} and {@code form} with a role for what reads or changes the records.
 */
final class Routes {
    private Routes() {}

    static RouteTable of(Shell shell, CribDoor door, Runs runs, SignInPage signIn, OwnPage own) {
        RouteTable routes = new RouteTable();
        TodayPage today = new TodayPage(shell, door);
        routes.open(Place.TODAY.path(), today::show);
        routes.open(TodayPage.GO, today::go);
        routes.open(Place.THREAD.path(), new ThreadPage(shell)::show);
        routes.open(Place.TAP.path(), new TapPage(shell)::show);
        routes.open(MarkingPage.PATH, new MarkingPage(shell)::show);
        routes.open(IdentifyPage.PATH, new IdentifyPage(shell)::show);
        routes.open(Place.GAUGE.path(), new GaugePage(shell)::show);
        GrindPage grind = new GrindPage(shell);
        routes.open(Place.GRIND.path(), grind::show);
        routes.openForm(Place.GRIND.path() + "/open", grind::open);
        routes.open(Place.GRIND.path() + ".pdf", grind::pdf);
        body(routes, new BodyPage(shell));
        DialPage dial = new DialPage(shell);
        routes.open(Place.GRIND.path() + "/dial", dial::show);
        routes.open(Place.GRIND.path() + "/dial.pdf", dial::pdf);
        routes.openForm(Place.GRIND.path() + "/dial", dial::post);
        routes.openForm(Place.GRIND.path() + "/dial/open", dial::open);
        routes.open(Place.HOLE.path(), new HolePage(shell)::show);
        CutPage cut = new CutPage(shell);
        routes.open(Place.CUT.path(), cut::show);
        routes.openForm(Place.CUT.path() + "/open", cut::open);
        routes.open(Place.CUT.path() + ".pdf", cut::pdf);
        routes.open(Place.WHY.path(), new WhyPage(shell)::show);
        AskedPages.of(shell).forEach(asked -> routes.open(asked.path(), asked::show));
        crib(routes, shell, door);
        people(routes, new PeoplePage(shell, door), signIn, own);
        job(routes, shell, door);
        spread(routes, new SpreadPage(shell, runs));
        methods(routes, new MethodsPage(shell));
        routes.open("/assets/{digest}/{name}", AssetDoor::send);
        api(routes, door);
        routes.open("/api/{noun}", ApiDoor::get);
        routes.openForm("/api/{noun}", ApiDoor::post);
        return routes;
    }

    private static void methods(RouteTable routes, MethodsPage methods) {
        routes.open(Place.METHODS.path(), methods::list);
        routes.open(Place.METHODS.path() + "/sources", methods::sources);
        routes.open(Place.METHODS.path() + "/{note}", methods::show);
    }

    private static void body(RouteTable routes, BodyPage body) {
        routes.open(BodyPage.PATH, body::show);
        routes.open(BodyPage.PATH + ".png", body::picture);
        for (BodyFormat format : BodyFormat.values()) {
            routes.open(BodyPage.PATH + "." + format.ending(), ctx -> body.file(ctx, format));
        }
    }

    /** Records belong to people who have signed in, and to whoever sits at this machine. */
    private static void crib(RouteTable routes, Shell shell, CribDoor door) {
        CribPage crib = new CribPage(shell, door);
        routes.page(Place.CRIB.path(), LOOK, crib::list);
        routes.form(Place.CRIB.path(), KEEP, crib::add);
        routes.page(DuePage.PATH, LOOK, new DuePage(shell, door)::show);
        ThingPage thing = new ThingPage(shell, door);
        routes.page(Place.CRIB.path() + "/{mark}", LOOK, thing::show);
        routes.form(Place.CRIB.path() + "/{mark}", USE, thing::log);
        routes.form(Place.CRIB.path() + "/{mark}/take-back", KEEP, thing::takeBack);
    }

    /** Many set-ups cost the machine something: whoever starts them has to be somebody. */
    private static void spread(RouteTable routes, SpreadPage spread) {
        String run = WishForm.PATH + "/{run}";
        routes.open(WishForm.PATH, spread::show);
        routes.form(WishForm.PATH, USE, spread::start);
        routes.page(run, LOOK, spread::run);
        routes.page(run + "/events", LOOK, new SseHandler(spread::events));
        routes.page(run + "/file", LOOK, spread::file);
        routes.form(run + "/stop", USE, spread::stop);
        routes.form(run + "/go-on", USE, spread::goOn);
        routes.form(run + "/throw-away", USE, spread::throwAway);
    }

    /** What other programs ask and tell; the addresses with a name in them come last. */
    private static void api(RouteTable routes, CribDoor door) {
        routes.open(
                "/api",
                ctx -> ctx.contentType("application/json; charset=utf-8").result(OpenApi.document()));
        routes.page("/api/me", LOOK, ApiDoor::me);
        CribApi crib = new CribApi(door);
        routes.page("/api/crib", LOOK, crib::list);
        routes.form("/api/crib", KEEP, crib::add);
        routes.page("/api/crib/{mark}", LOOK, crib::show);
        routes.form("/api/crib/{mark}", USE, crib::log);
        routes.page("/api/due", LOOK, crib::due);
        routes.page("/api/due/{mark}", LOOK, crib::dueOf);
        JobApi job = new JobApi(door);
        routes.page("/api/jobs", LOOK, job::list);
        routes.form("/api/jobs", KEEP, job::add);
        routes.form("/api/jobs/plan", LOOK, job::plan);
        routes.page("/api/jobs/{number}", LOOK, job::show);
        routes.form("/api/jobs/{number}/done", USE, job::done);
        routes.form("/api/jobs/{number}/take-back", KEEP, job::takeBack);
    }

    private static void people(RouteTable routes, PeoplePage people, SignInPage signIn, OwnPage own) {
        routes.open(SignInPage.PATH, signIn::show);
        routes.openForm(SignInPage.PATH, signIn::enter);
        routes.form("/sign-out", LOOK, signIn::out);
        routes.form("/sign-out/everywhere", LOOK, signIn::outEverywhere);
        routes.page(OwnPage.PATH, LOOK, own::show);
        routes.form(OwnPage.PATH + "/password", LOOK, own::password);
        routes.page(PeoplePage.PATH, KEEP, people::list);
        routes.form(PeoplePage.PATH, KEEP, people::add);
        routes.form(PeoplePage.PATH + "/{name}/role", KEEP, people::role);
        routes.form(PeoplePage.PATH + "/{name}/reset", KEEP, people::reset);
        routes.form(PeoplePage.PATH + "/{name}/close", KEEP, people::close);
        routes.form(PeoplePage.PATH + "/{name}/open", KEEP, people::open);
    }

    private static void job(RouteTable routes, Shell shell, CribDoor door) {
        JobPage jobs = new JobPage(shell, door);
        routes.page(Place.JOB.path(), LOOK, jobs::list);
        routes.form(Place.JOB.path(), KEEP, jobs::keep);
        routes.form(Place.JOB.path() + "/new/plan", LOOK, jobs::plan);
        KeptJobPage job = new KeptJobPage(shell, door);
        routes.page(Place.JOB.path() + "/{number}", LOOK, job::show);
        routes.page(Place.JOB.path() + "/{number}/card.pdf", LOOK, job::card);
        routes.form(Place.JOB.path() + "/{number}/done", USE, job::done);
        routes.form(Place.JOB.path() + "/{number}/take-back", KEEP, job::takeBack);
    }
}
