// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.router.Endpoint;
import io.javalin.util.JavalinBindException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import landfall.app.crib.CribDoor;
import landfall.app.folder.DataFolder;
import landfall.app.people.Entrance;
import landfall.app.people.OwnPage;
import landfall.app.people.SignInPage;
import landfall.app.shell.Shell;
import landfall.app.spread.Runs;
import landfall.store.StoreAddress;
import org.eclipse.jetty.server.HttpConfiguration;

/** The web server: by default on the loopback address only, for nobody but this machine. */
public final class WebServer {
    /** A form with a card in it is some kilobytes; a whole shop's card is well under this. */
    static final long GREATEST_REQUEST = 256 * 1024;
    /** An address carries the whole state of a page: a tap, a fixture and a table of cam points. */
    static final int GREATEST_HEADERS = 32 * 1024;

    private final Javalin javalin;

    private final CribDoor crib;

    private final Runs runs;

    private WebServer(Javalin javalin, CribDoor crib, Runs runs) {
        this.javalin = javalin;
        this.crib = crib;
        this.runs = runs;
    }

    /** Starts it with the crib of this user; port 0 takes a free one. */
    public static WebServer start(Listen listen) {
        return start(listen, DataFolder.ofThisUser().crib());
    }

    /** Starts it with the crib of that store, which is opened when somebody first looks into it. */
    public static WebServer start(Listen listen, StoreAddress store) {
        CribDoor crib = new CribDoor(store, Clock.systemUTC());
        Runs runs = new Runs(DataFolder.ofThisUser().path().resolve("what-if"));
        Javalin javalin = Javalin.create(config -> configure(config, listen, crib, runs));
        try {
            return new WebServer(javalin.start(listen.address(), listen.port()), crib, runs);
        } catch (JavalinBindException e) {
            throw new PortTaken(e);
        }
    }

    /** Another program has the port. */
    public static final class PortTaken extends RuntimeException {
        private static final long serialVersionUID = 1L;

        PortTaken(Throwable cause) {
            super(cause);
        }
    }

    private static void configure(JavalinConfig config, Listen listen, CribDoor crib, Runs runs) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = GREATEST_REQUEST;
        config.http.asyncTimeout = Duration.ofSeconds(30).toMillis();
        config.jetty.modifyHttpConfiguration(WebServer::quietAndSmall);
        Shell shell = new Shell();
        Entrance entrance = new Entrance(crib, listen.proxy() != null);
        SignInPage signIn = new SignInPage(shell, entrance, ctx -> Guard.address(ctx, listen));
        Guard.on(config.routes, listen, entrance);
        Routes.of(shell, crib, runs, signIn, new OwnPage(shell, entrance, signIn))
                .on(config.routes);
        Trouble.on(config.routes, shell, signIn);
    }

    private static void quietAndSmall(HttpConfiguration http) {
        http.setSendServerVersion(false);
        http.setSendDateHeader(true);
        http.setRequestHeaderSize(GREATEST_HEADERS);
    }

    /** Whether the server can listen there at all. */
    public static boolean isOfThisMachine(String address) {
        try {
            InetAddress asked = InetAddress.getByName(address);
            return asked.isAnyLocalAddress() || NetworkInterface.getByInetAddress(asked) != null;
        } catch (UnknownHostException | SocketException e) {
            return false;
        }
    }

    public static boolean isLoopback(String address) {
        try {
            return InetAddress.getByName(address).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }

    public int port() {
        return javalin.port();
    }

    /** Every address that is served, as the server itself knows them. */
    List<Endpoint> endpoints() {
        return javalin.unsafe.internalRouter.allHttpHandlers().stream()
                .map(parsed -> parsed.endpoint)
                .filter(endpoint -> endpoint.method.isHttpMethod())
                .toList();
    }

    public void stop() {
        runs.close();
        javalin.stop();
        crib.close();
    }
}
