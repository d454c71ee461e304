// SPDX-License-Identifier: Apache-2.0
package landfall.store.backup;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Counts lines and digests them. */
final class Digesting {
    private final MessageDigest digest;
    private long things;
    private long events;
    private long jobs;
    private long people;

    Digesting() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    void thing(String line) {
        things++;
        take(line);
    }

    void event(String line) {
        events++;
        take(line);
    }

    void job(String line) {
        jobs++;
        take(line);
    }

    void done(String line) {
        take(line);
    }

    void person(String line) {
        people++;
        take(line);
    }

    private void take(String line) {
        digest.update((line + "\n").getBytes(StandardCharsets.UTF_8));
    }

    Content content() {
        return new Content(things, events, jobs, people, HexFormat.of().formatHex(digest.digest()));
    }
}
