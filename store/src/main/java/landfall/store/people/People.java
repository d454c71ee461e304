// SPDX-License-Identifier: Apache-2.0
package landfall.store.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.Store;
import org.jdbi.v3.core.Handle;

/** The people of a shop. Whoever changes them takes turns, so that the last who keeps is never shut out by another. */
public final class People {
    private static final String COLUMNS = "name, shown, role, active, since";
    private static final int LONGEST_SHOWN = 80;

    private final Store store;
    private final Clock clock;

    public People(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** What somebody is called on pages: the name as it was typed where nothing else is told. */
    public static Answer<String> shown(String field, String typed, PersonName name) {
        String text = typed.strip().isEmpty() ? name.text() : typed.strip();
        return text.length() <= LONGEST_SHOWN && text.chars().noneMatch(Character::isISOControl)
                ? Answer.of(text)
                : Answer.refused(new Finding(
                        field,
                        typed,
                        "is longer than " + LONGEST_SHOWN + " characters, or has signs that cannot be shown",
                        "write how others call the person"));
    }

    /** Adds somebody; a name that is taken is refused, whoever had it. */
    public Answer<Person> add(PersonName name, String shown, Role role, Password password) {
        String hash = Hashing.hash(password);
        Person person = new Person(name, shown, role, true, Instant.ofEpochMilli(clock.millis()));
        return store.write(handle -> {
            turn(handle);
            int added = handle.createUpdate("insert into person (name, shown, role, password, active, since)"
                            + " values (:name, :shown, :role, :password, 1, :since) on conflict (name) do nothing")
                    .bind("name", name.text())
                    .bind("shown", shown)
                    .bind("role", role.word())
                    .bind("password", hash)
                    .bind("since", person.since().toEpochMilli())
                    .execute();
            return added == 1
                    ? Answer.of(person)
                    : Answer.refused(new Finding(
                            "name",
                            name.text(),
                            "is taken, by somebody who is there or was",
                            "choose another; for a new password there is people reset, for who came back people open"));
        });
    }

    public Optional<Person> find(PersonName name) {
        return store.read(handle -> find(handle, name));
    }

    public List<Person> list() {
        return store.read(handle -> handle.createQuery("select " + COLUMNS + " from person order by name")
                .map((rows, context) -> person(rows))
                .list());
    }

    /** Whether somebody can let others in. */
    public boolean isKept() {
        return store.read(handle -> keepers(handle) > 0);
    }

    /** Who has that name and that password; an unknown name takes as long as a wrong password. */
    public Optional<Person> enter(Optional<PersonName> name, Password password) {
        Optional<Held> held = name.flatMap(known -> store.read(handle -> held(handle, known)));
        boolean right =
                held.isPresent() ? Hashing.matches(password, held.get().hash()) : Hashing.matchesNobody(password);
        return right ? held.map(Held::person).filter(Person::active) : Optional.empty();
    }

    /** Gives another role; it counts from the next request on. */
    public Answer<Person> role(PersonName name, Role role) {
        return change(name, person -> new Person(name, person.shown(), role, person.active(), person.since()));
    }

    /** Shuts somebody out, at once and everywhere. */
    public Answer<Person> close(PersonName name) {
        return change(name, person -> new Person(name, person.shown(), person.role(), false, person.since()));
    }

    /** Lets somebody in again. */
    public Answer<Person> open(PersonName name) {
        return change(name, person -> new Person(name, person.shown(), person.role(), true, person.since()));
    }

    /** Gives a new password; whoever was signed in by the old one is signed out. */
    public Answer<Person> reset(PersonName name, Password password) {
        String hash = Hashing.hash(password);
        return store.write(handle -> {
            turn(handle);
            int changed = handle.createUpdate("update person set password = :password where name = :name")
                    .bind("password", hash)
                    .bind("name", name.text())
                    .execute();
            SignIns.endAll(handle, name);
            return changed == 1 ? Answer.of(find(handle, name).orElseThrow()) : Answer.refused(unknown(name));
        });
    }

    private Answer<Person> change(PersonName name, UnaryOperator<Person> how) {
        return store.write(handle -> {
            turn(handle);
            Optional<Person> before = find(handle, name);
            if (before.isEmpty()) {
                return Answer.refused(unknown(name));
            }
            Person after = how.apply(before.get());
            if (keeps(before.get()) && !keeps(after) && keepers(handle) == 1) {
                return Answer.refused(lastKeeper(name));
            }
            handle.createUpdate("update person set role = :role, active = :active where name = :name")
                    .bind("role", after.role().word())
                    .bind("active", after.active() ? 1 : 0)
                    .bind("name", name.text())
                    .execute();
            if (!after.active()) {
                SignIns.endAll(handle, name);
            }
            return Answer.of(after);
        });
    }

    /** What is said of a name that nobody has. */
    public static Finding unknown(PersonName name) {
        return new Finding("name", name.text(), "is nobody here", "look with landfall people list");
    }

    private static Finding lastKeeper(PersonName name) {
        return new Finding(
                "name",
                name.text(),
                "is the last who keeps",
                "give somebody else the role keep before, then do it again");
    }

    private static boolean keeps(Person person) {
        return person.active() && person.role() == Role.KEEP;
    }

    /** Holds the one row that all who change people write first. */
    private static void turn(Handle handle) {
        handle.execute("insert into note (name, told) values ('people-turn', '')"
                + " on conflict (name) do update set told = excluded.told");
    }

    private static int keepers(Handle handle) {
        return handle.createQuery("select count(*) from person where active = 1 and role = 'keep'")
                .mapTo(Integer.class)
                .one();
    }

    private static Optional<Person> find(Handle handle, PersonName name) {
        return handle.createQuery("select " + COLUMNS + " from person where name = :name")
                .bind("name", name.text())
                .map((rows, context) -> person(rows))
                .findOne();
    }

    /** A person with the hash of the password, which leaves this class no further. */
    private record Held(Person person, String hash) {
        @Override
        public String toString() {
            return person.toString();
        }
    }

    private static Optional<Held> held(Handle handle, PersonName name) {
        return handle.createQuery("select " + COLUMNS + ", password from person where name = :name")
                .bind("name", name.text())
                .map((rows, context) -> new Held(person(rows), rows.getString("password")))
                .findOne();
    }

    static Person person(ResultSet rows) throws SQLException {
        return new Person(
                new PersonName(rows.getString("name")),
                rows.getString("shown"),
                Role.valueOf(rows.getString("role").toUpperCase(Locale.ROOT)),
                rows.getInt("active") == 1,
                Instant.ofEpochMilli(rows.getLong("since")));
    }
}
