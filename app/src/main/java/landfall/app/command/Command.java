// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import java.util.Map;

/** One noun of the command line. */
interface Command {
    String noun();

    /** One line of help. */
    String summary();

    /** The whole help, in 80 columns. */
    String help();

    Exit run(List<String> args, Terminal terminal);

    /** What may be written after the noun: options by the words that come first, none for the noun alone. */
    Map<String, Options> written();
}
