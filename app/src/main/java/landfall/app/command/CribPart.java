// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;

/** One thing that the crib does. */
interface CribPart {
    String word();

    /** How it is written, without the program's name. */
    String usage();

    /** Its words and options; {@code args} are those that were written, where the options depend on them. */
    Options options(Options options, List<String> args);

    Exit run(CribDesk desk);
}
