// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.Console;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Optional;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.people.Password;
import landfall.store.people.PersonName;

/**
 * A password as a command takes it: typed twice at the terminal without being shown, or the first line of standard
 * input. Never a word of the command, which others on the machine could read.
 */
final class PasswordIn {
    private PasswordIn() {}

    static Answer<Password> read(Terminal terminal, PersonName owner) {
        Console console = System.console();
        return terminal.in() == System.in && console != null ? typed(console, owner) : line(terminal, owner);
    }

    private static Answer<Password> typed(Console console, PersonName owner) {
        Optional<String> first = asked(console, Words.of("people.askPassword", owner, Password.LEAST));
        if (first.isEmpty()) {
            return none();
        }
        Answer<Password> chosen = Password.chosen("password", first.get(), owner);
        if (!chosen.findings().isEmpty()) {
            return chosen;
        }
        return asked(console, Words.of("people.askAgain")).equals(first)
                ? chosen
                : Answer.refused(new Finding("password", "", "was typed differently the second time", "do it again"));
    }

    private static Optional<String> asked(Console console, String prompt) {
        char[] typed = console.readPassword("%s ", prompt);
        if (typed == null) {
            return Optional.empty();
        }
        String text = new String(typed);
        Arrays.fill(typed, ' ');
        return Optional.of(text);
    }

    private static Answer<Password> line(Terminal terminal, PersonName owner) {
        try {
            String line = terminal.lines().readLine();
            return line == null ? none() : Password.chosen("password", line, owner);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Answer<Password> none() {
        return Answer.refused(new Finding(
                "password",
                "",
                "is needed",
                "type it at the terminal, or give it as the first line of standard input"));
    }
}
