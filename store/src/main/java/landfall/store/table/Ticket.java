// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A name for a request, made of what it says. */
final class Ticket {
    private static final int BYTES = 16;

    private Ticket() {}

    static String of(String told) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(told.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
