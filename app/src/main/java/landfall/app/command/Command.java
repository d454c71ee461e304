// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;

/** One noun of the command line. */
public interface Command {
    String noun();

    /** One line of help. */
    String summary();

    /** The whole help, in 80 columns. */
    String help();

    Exit run(List<String> args, Terminal terminal);
}
