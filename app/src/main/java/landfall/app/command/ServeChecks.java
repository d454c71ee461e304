// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.net.URI;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import landfall.app.serve.Listen;
import landfall.app.serve.WebServer;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.StoreFault;
import landfall.store.people.People;

/** What must hold before others on the network can reach the crib. */
final class ServeChecks {
    private ServeChecks() {}

    /** The address that people open when a proxy stands before the server; what cannot be is added to the findings. */
    static Optional<URI> proxy(Options.Written written, String address, List<Finding> findings) {
        Optional<String> text = written.text("tls-proxy");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (!text.get().matches("https://([A-Za-z0-9.-]+|\\[[0-9A-Fa-f:]+])(:\\d{1,5})?/?")) {
            findings.add(new Finding(
                    "--tls-proxy",
                    text.get(),
                    "is not the https address that people open",
                    "write it without a path, such as --tls-proxy https://toolroom.example"));
            return Optional.empty();
        }
        if (!WebServer.isLoopback(address)) {
            findings.add(new Finding(
                    "--listen",
                    address,
                    "would let people go round the proxy",
                    "leave it out, and let the proxy on this machine pass requests on to " + Listen.LOOPBACK));
        }
        return Optional.of(URI.create(text.get().replaceFirst("/$", "")));
    }

    /** Over the network somebody must be there who keeps the crib. */
    static Answer<StoreAddress> kept(Listen listen, StoreAddress address, Options.Written written) {
        if (listen.proxy() == null && WebServer.isLoopback(listen.address())) {
            return Answer.of(address);
        }
        try (Store store = Store.open(address, Clock.systemUTC())) {
            if (new People(store, Clock.systemUTC()).isKept()) {
                return Answer.of(address);
            }
        } catch (StoreFault e) {
            return Answer.refused(e.finding());
        }
        boolean proxied = listen.proxy() != null;
        String same = written.text("store").map(text -> " and the same --store").orElse("");
        return Answer.refused(new Finding(
                proxied ? "--tls-proxy" : "--listen",
                proxied ? String.valueOf(listen.proxy()) : listen.address(),
                "opens the crib to others, and nobody is let in yet who keeps it",
                "run landfall people add NAME --role keep" + same + ", then start it again; or leave the option out"));
    }
}
