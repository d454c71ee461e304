// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** One run of the command line with its streams caught. */
record Run(Exit exit, String out, String err) {
    static Run of(String... words) {
        return with("", words);
    }

    static Run with(String input, String... words) {
        var in = new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8));
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(
                in,
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        Exit exit = new Commands().run(List.of(words), terminal);
        terminal.out().flush();
        return new Run(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
