// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;

/** {@code job show NUMBER}: the job as it stands, planned with what the crib holds now. */
final class JobShow implements CribPart {
    @Override
    public String word() {
        return "show";
    }

    @Override
    public String usage() {
        return "show NUMBER";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.word("NUMBER");
    }

    @Override
    public Exit run(CribDesk desk) {
        return JobKept.with(desk, job -> JobKept.say(desk, job));
    }
}
