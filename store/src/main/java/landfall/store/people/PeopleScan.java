// SPDX-License-Identifier: Apache-2.0
package landfall.store.people;

import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;
import landfall.fault.Answer;
import org.jdbi.v3.core.Handle;

/** People as they lie in the store, for a backup. Who is signed in is no part of it. */
public final class PeopleScan {
    private PeopleScan() {}

    /** A person with the hash of the password, which no text of this shows. */
    public record Held(Person person, String hash) {
        @Override
        public String toString() {
            return person.toString();
        }
    }

    /** What a backup tells of a person. */
    public record Words(String name, String shown, String role) {}

    /** The person that is told, where such a one can be. */
    public static Optional<Held> read(Words words, boolean active, Instant since, String hash) {
        Answer<PersonName> name = PersonName.read("name", words.name);
        Answer<Role> role = Role.read("role", words.role);
        if (!(name instanceof Answer.Of<PersonName> named)
                || !(role instanceof Answer.Of<Role> known)
                || !named.value().text().equals(words.name)
                || !People.shown("shown", words.shown, named.value()).findings().isEmpty()
                || !Hashing.isHash(hash)) {
            return Optional.empty();
        }
        return Optional.of(new Held(new Person(named.value(), words.shown, known.value(), active, since), hash));
    }

    /** Every person in the order of names. */
    public static void each(Handle handle, Consumer<Held> each) {
        handle.createQuery("select name, shown, role, active, since, password from person order by name")
                .map((rows, context) -> new Held(People.person(rows), rows.getString("password")))
                .useStream(all -> all.forEach(each));
    }

    public static long count(Handle handle) {
        return handle.createQuery("select count(*) from person")
                .mapTo(Long.class)
                .one();
    }

    public static void put(Handle handle, Held held) {
        Person person = held.person;
        handle.createUpdate("insert into person (name, shown, role, password, active, since)"
                        + " values (:name, :shown, :role, :password, :active, :since)")
                .bind("name", person.name().text())
                .bind("shown", person.shown())
                .bind("role", person.role().word())
                .bind("password", held.hash)
                .bind("active", person.active() ? 1 : 0)
                .bind("since", person.since().toEpochMilli())
                .execute();
    }
}
