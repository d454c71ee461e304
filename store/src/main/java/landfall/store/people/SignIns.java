// SPDX-License-Identifier: Apache-2.0
package landfall.store.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import landfall.store.Store;
import landfall.store.StoreFault;
import org.jdbi.v3.core.Handle;

/**
 * Who is signed in. They are in the store, so that a server that starts again knows them, and by digest, so that nobody
 * who reads the store can take one over. A person's role is read with every look.
 */
public final class SignIns {
    /** Without a request for so long, a sign-in ends: a shift. Own choice. */
    public static final Duration IDLE = Duration.ofHours(8);
    /** However busy, it ends after that: a week. Own choice. */
    public static final Duration LONGEST = Duration.ofDays(7);

    /** How exactly the last request is kept; each finer step would be a write more. */
    private static final Duration STEP = Duration.ofMinutes(5);

    private static final int TOKEN_BYTES = 32;
    private static final System.Logger LOG = System.getLogger(SignIns.class.getName());
    private static final SecureRandom RANDOM = new SecureRandom();

    private final Store store;
    private final Clock clock;

    public SignIns(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** Signs in, under a token that was never there before; what the browser held until then ends. */
    public String begin(Person person, Optional<String> before) {
        byte[] bytes = new byte[TOKEN_BYTES];
        RANDOM.nextBytes(bytes);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        long now = clock.millis();
        store.write(handle -> {
            before.ifPresent(old -> end(handle, old));
            handle.createUpdate("delete from sign_in where since < :oldest or seen < :idle")
                    .bind("oldest", now - LONGEST.toMillis())
                    .bind("idle", now - IDLE.toMillis())
                    .execute();
            return handle.createUpdate("insert into sign_in (token, person, since, seen)"
                            + " values (:token, :person, :now, :now)")
                    .bind("token", digest(token))
                    .bind("person", person.name().text())
                    .bind("now", now)
                    .execute();
        });
        return token;
    }

    /** Whose token that is, while the sign-in lasts and the person is not shut out. */
    public Optional<Person> find(String token) {
        long now = clock.millis();
        String digest = digest(token);
        Optional<Seen> found = store.read(handle -> handle.createQuery(
                        "select name, shown, role, active, person.since as since, seen from sign_in"
                                + " join person on person.name = sign_in.person where token = :token and active = 1"
                                + " and sign_in.since >= :oldest and seen >= :idle")
                .bind("token", digest)
                .bind("oldest", now - LONGEST.toMillis())
                .bind("idle", now - IDLE.toMillis())
                .map((rows, context) -> new Seen(People.person(rows), rows.getLong("seen")))
                .findOne());
        if (found.isPresent() && now - found.get().at() >= STEP.toMillis()) {
            keepSeen(digest, now);
        }
        return found.map(Seen::person);
    }

    /** A store that takes no writing can be read all the same; then the sign-in ends sooner. */
    private void keepSeen(String digest, long now) {
        try {
            store.write(handle -> handle.createUpdate("update sign_in set seen = :now where token = :token")
                    .bind("now", now)
                    .bind("token", digest)
                    .execute());
        } catch (StoreFault e) {
            LOG.log(System.Logger.Level.DEBUG, "not kept that somebody was seen", e);
        }
    }

    private record Seen(Person person, long at) {}

    public void end(String token) {
        store.write(handle -> end(handle, token));
    }

    /** Signs a person out of every browser. */
    public void endAll(PersonName name) {
        store.write(handle -> endAll(handle, name));
    }

    private static int end(Handle handle, String token) {
        return handle.createUpdate("delete from sign_in where token = :token")
                .bind("token", digest(token))
                .execute();
    }

    static int endAll(Handle handle, PersonName name) {
        return handle.createUpdate("delete from sign_in where person = :name")
                .bind("name", name.text())
                .execute();
    }

    /** What the forms of a signed-in person bring back: it follows from the token, and the token not from it. */
    public static String formToken(String token) {
        return digest("form " + token);
    }

    private static String digest(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
