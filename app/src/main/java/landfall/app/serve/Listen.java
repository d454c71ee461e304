// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import java.net.URI;
import org.jspecify.annotations.Nullable;

/**
 * Where the server listens.
 *
 * @param proxy the address that people open, when a program on this machine stands before the server and speaks TLS
 *     with them; null when nothing does
 */
public record Listen(String address, int port, @Nullable URI proxy) {
    public static final String LOOPBACK = "127.0.0.1";
    public static final int USUAL_PORT = 7317;

    public Listen(String address, int port) {
        this(address, port, null);
    }

    /** Any free port on the loopback address. */
    public static Listen anywhereOnThisMachine() {
        return new Listen(LOOPBACK, 0);
    }

    /** Whether nobody but whoever sits at this machine can send a request. */
    boolean isForThisMachineAlone() {
        return proxy == null && WebServer.isLoopback(address);
    }
}
