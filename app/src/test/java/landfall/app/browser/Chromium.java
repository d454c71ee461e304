// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import landfall.app.serve.Listen;
import landfall.app.serve.WebServer;
import landfall.store.StoreAddress;

/** The machine's own Chromium, and a server for it. Whatever a page writes to the console or fails to load is kept. */
final class Chromium implements AutoCloseable {
    static final int DESKTOP = 1280;
    static final int PHONE = 390;

    private final StoreAddress store;
    private final String address;
    private final int port;
    private WebServer server;
    private final Playwright playwright =
            Playwright.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    private final Browser browser;
    private final List<String> complaints = new ArrayList<>();

    Chromium() {
        this(Listen.LOOPBACK, newStore());
    }

    /** With the server at that address: on every other than the loopback people sign in. */
    Chromium(String address, StoreAddress store) {
        this(address, store, List.of());
    }

    /** One that draws in space without a graphics card; it draws everything else more slowly. */
    static Chromium thatDrawsInSpace() {
        return new Chromium(
                Listen.LOOPBACK, newStore(), List.of("--use-angle=swiftshader", "--enable-unsafe-swiftshader"));
    }

    private Chromium(String address, StoreAddress store, List<String> more) {
        List<String> words = new ArrayList<>(
                List.of("--no-sandbox", "--disable-background-networking", "--disable-component-update"));
        words.addAll(more);
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(executable())
                        .setArgs(words));
        this.store = store;
        this.address = address;
        this.server = WebServer.start(new Listen(address, 0), store);
        this.port = server.port();
    }

    StoreAddress store() {
        return store;
    }

    void stopServer() {
        server.stop();
    }

    /** Again at the same port, with the same store. */
    void startServer() {
        server = WebServer.start(new Listen(address, port), store);
    }

    /** A crib of its own for each server. */
    static StoreAddress newStore() {
        try {
            return new StoreAddress.InFile(Files.createTempDirectory("crib").resolve("crib.db"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path executable() {
        return Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no Chromium on this machine: apt-get install chromium"));
    }

    /** A new page of its own, as wide as asked. */
    Page page(int width, ColorScheme scheme) {
        return page(new Browser.NewContextOptions()
                .setViewportSize(width, width == PHONE ? 844 : 900)
                .setColorScheme(scheme)
                .setHasTouch(width == PHONE));
    }

    Page page(Browser.NewContextOptions options) {
        BrowserContext context = browser.newContext(options);
        context.setDefaultTimeout(15_000);
        Page page = context.newPage();
        page.onConsoleMessage(message -> {
            // a picture of a canvas has to be read back from the driver, which says so
            boolean ofThePicture = message.text().contains("GPU stall due to ReadPixels");
            if (!ofThePicture
                    && (message.type().equals("error") || message.type().equals("warning"))) {
                complaints.add(page.url() + ": " + message.text());
            }
        });
        page.onPageError(error -> complaints.add(page.url() + ": " + error));
        page.onRequest(request -> {
            if (!request.url().startsWith(address("")) && !request.url().startsWith("data:")) {
                complaints.add("asked another machine: " + request.url());
            }
        });
        return page;
    }

    String address(String path) {
        return "http://127.0.0.1:" + port + path;
    }

    /** What pages have complained of since the last call. */
    List<String> complaints() {
        List<String> said = List.copyOf(complaints);
        complaints.clear();
        return said;
    }

    /** Keeps a picture of the whole page for people to look at. */
    static void picture(Page page, String name) {
        page.screenshot(
                new Page.ScreenshotOptions().setFullPage(true).setPath(Path.of("target/screenshots", name + ".png")));
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
        server.stop();
    }
}
