// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.people.Password;
import landfall.store.people.People;
import landfall.store.people.Person;
import landfall.store.people.PersonName;
import landfall.store.people.Role;

/** Where the commands about people are answered: the people of the open store, what was written, whom to tell. */
record PeopleDesk(People people, Options.Written written, boolean json, Terminal terminal) {
    private Answer<PersonName> name() {
        return PersonName.read("name", written.word(0).orElse(""));
    }

    private Answer<Role> role() {
        return written.text("role")
                .map(text -> Role.read("role", text))
                .orElseGet(
                        () -> Answer.refused(new Finding("role", "", "is needed", "write --role look, use or keep")));
    }

    Exit add() {
        Answer<PersonName> name = name();
        Answer<Role> role = role();
        List<Finding> findings = new ArrayList<>(name.findings());
        findings.addAll(role.findings());
        if (!findings.isEmpty()) {
            return refuse(findings);
        }
        PersonName known = name.orThrow();
        Answer<String> shown = People.shown("shown", written.text("shown").orElse(""), known);
        Answer<Person> added = shown.then(called ->
                PasswordIn.read(terminal, known).then(password -> people.add(known, called, role.orThrow(), password)));
        return added instanceof Answer.Of<Person> of ? say(of.value(), "people.added") : refuse(added.findings());
    }

    Exit giveRole() {
        Answer<Role> role = role();
        return role instanceof Answer.Of<Role> of
                ? change((people, name) -> people.role(name, of.value()), "people.roleGiven")
                : refuse(role.findings());
    }

    Exit reset() {
        return change(
                (all, name) -> {
                    Answer<Password> password = PasswordIn.read(terminal, name);
                    return password.then(chosen -> all.reset(name, chosen));
                },
                "people.wasReset");
    }

    Exit close() {
        return change(People::close, "people.wasClosed");
    }

    Exit open() {
        return change(People::open, "people.wasOpened");
    }

    private Exit change(BiFunction<People, PersonName, Answer<Person>> how, String words) {
        Answer<PersonName> name = name();
        if (!(name instanceof Answer.Of<PersonName> of)) {
            return refuse(name.findings());
        }
        if (people.find(of.value()).isEmpty()) {
            refuse(List.of(People.unknown(of.value())));
            return Exit.NO_RECORD;
        }
        Answer<Person> changed = how.apply(people, of.value());
        return changed instanceof Answer.Of<Person> person ? say(person.value(), words) : refuse(changed.findings());
    }

    Exit list() {
        List<Person> all = people.list();
        if (json) {
            terminal.out().println(json(out -> {
                out.writeStartObject();
                out.writeArrayFieldStart("people");
                for (Person person : all) {
                    write(out, person);
                }
                out.writeEndArray();
                out.writeEndObject();
            }));
        } else if (all.isEmpty()) {
            terminal.out().println(Words.of("people.empty"));
        } else {
            all.forEach(person -> terminal.out()
                    .printf(
                            "%-20s %-5s %-24s %s%n",
                            person.name(),
                            person.role().word(),
                            person.shown(),
                            person.active() ? "" : Words.of("people.closed")));
        }
        return Exit.DONE;
    }

    private Exit say(Person person, String words) {
        terminal.out()
                .println(
                        json
                                ? json(out -> write(out, person))
                                : Words.of(words, person.name(), person.role().word()));
        return Exit.DONE;
    }

    private Exit refuse(List<Finding> findings) {
        return Refusals.say(findings, json, terminal);
    }

    private static void write(JsonGenerator out, Person person) throws IOException {
        out.writeStartObject();
        out.writeStringField("name", person.name().text());
        out.writeStringField("shown", person.shown());
        out.writeStringField("role", person.role().word());
        out.writeBooleanField("active", person.active());
        out.writeStringField("since", person.since().toString());
        out.writeEndObject();
    }

    private interface Writing {
        void to(JsonGenerator out) throws IOException;
    }

    private static String json(Writing writing) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
            writing.to(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
