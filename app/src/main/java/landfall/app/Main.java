// SPDX-License-Identifier: Apache-2.0
package landfall.app;

import java.util.List;
import java.util.Locale;
import landfall.app.command.Commands;
import landfall.app.command.Exit;
import landfall.app.command.Terminal;

/** The program. Exit 0 done; 2 the input is refused; 3 no such record; 1 a fault of ours. */
public final class Main {
    private Main() {}

    public static void main(String[] words) {
        // figures in sentences are written with a point wherever the shop is
        Locale.setDefault(Locale.ROOT);
        Terminal terminal = Terminal.ofThisProcess();
        Exit exit = new Commands().run(List.of(words), terminal);
        terminal.out().flush();
        terminal.err().flush();
        System.exit(exit.code());
    }
}
