// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import landfall.app.serve.Listen;
import landfall.app.serve.WebServer;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.StoreAddress;

/** {@code landfall serve}: the pages, for as long as the command runs. */
final class ServeCommand implements Command {
    @Override
    public String noun() {
        return "serve";
    }

    @Override
    public String summary() {
        return Words.of("noun.serve");
    }

    @Override
    public String help() {
        StringBuilder text = new StringBuilder("landfall serve - " + summary() + "\n\n");
        HelpPage.row(text, "--port N", Words.of("command.serve.port", Listen.USUAL_PORT));
        HelpPage.row(text, "--listen ADDRESS", Words.of("command.serve.listen"));
        HelpPage.row(text, "--tls-proxy URL", Words.of("command.serve.proxy"));
        HelpPage.row(text, "--store FILE|URL", Words.of("crib.store"));
        HelpPage.examples(text, noun());
        return text.toString();
    }

    @Override
    public Map<String, Options> written() {
        return Map.of("", options());
    }

    private Options options() {
        return new Options(noun()).text("port").text("listen").text("tls-proxy").text("store");
    }

    @Override
    public Exit run(List<String> args, Terminal terminal) {
        boolean json = args.contains("--json");
        Answer<Options.Written> read = options().read(args);
        if (!(read instanceof Answer.Of<Options.Written> of)) {
            return Refusals.say(read.findings(), json, terminal);
        }
        if (of.value().has("help")) {
            terminal.out().print(help());
            return Exit.DONE;
        }
        Answer<Listen> listen = listen(of.value());
        if (!(listen instanceof Answer.Of<Listen> where)) {
            return Refusals.say(listen.findings(), json, terminal);
        }
        Answer<StoreAddress> store =
                StoreOption.address(of.value()).then(address -> ServeChecks.kept(where.value(), address, of.value()));
        return store instanceof Answer.Of<StoreAddress> address
                ? serve(where.value(), address.value(), json, terminal)
                : Refusals.say(store.findings(), json, terminal);
    }

    private static Answer<Listen> listen(Options.Written written) {
        List<Finding> findings = new ArrayList<>();
        String port = written.text("port").orElse(String.valueOf(Listen.USUAL_PORT));
        if (!port.matches("\\d{1,5}") || Integer.parseInt(port) > 65535) {
            findings.add(new Finding(
                    "--port",
                    port,
                    "must be a whole number from 0 to 65535",
                    "leave it out for " + Listen.USUAL_PORT + ", or give 0 for any free port"));
        }
        String address = written.text("listen").orElse(Listen.LOOPBACK);
        if (!WebServer.isOfThisMachine(address)) {
            findings.add(new Finding(
                    "--listen",
                    address,
                    "is not an address of this machine",
                    "leave it out for " + Listen.LOOPBACK + ", or give 0.0.0.0 for all of them"));
        }
        Optional<URI> proxy = ServeChecks.proxy(written, address, findings);
        return findings.isEmpty()
                ? Answer.of(new Listen(address, Integer.parseInt(port), proxy.orElse(null)))
                : Answer.refused(findings);
    }

    private static Exit serve(Listen listen, StoreAddress store, boolean json, Terminal terminal) {
        WebServer server;
        try {
            server = WebServer.start(listen, store);
        } catch (WebServer.PortTaken e) {
            return Refusals.say(
                    List.of(new Finding(
                            "--port",
                            String.valueOf(listen.port()),
                            "is in use",
                            "give another, or 0 for any free one")),
                    json,
                    terminal);
        }
        Runtime.getRuntime().addShutdownHook(new Thread(server::stop));
        String shown = listen.address().equals("0.0.0.0") ? "localhost" : listen.address();
        terminal.out().println(Words.of("command.serve.at", shown, server.port()));
        if (listen.proxy() != null) {
            terminal.err().println(Words.of("command.serve.proxied", listen.proxy()));
        } else if (!WebServer.isLoopback(listen.address())) {
            terminal.err().println(Words.of("command.serve.open"));
        }
        terminal.out().flush();
        try {
            new CountDownLatch(1).await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            server.stop();
        }
        return Exit.DONE;
    }
}
