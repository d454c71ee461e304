// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

/** Where the server listens. */
public record Listen(String address, int port) {
    public static final String LOOPBACK = "127.0.0.1";
    public static final int USUAL_PORT = 7317;

    /** Any free port on the loopback address. */
    public static Listen anywhereOnThisMachine() {
        return new Listen(LOOPBACK, 0);
    }
}
