// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import landfall.cards.answer.JsonAnswer;
import landfall.fault.Finding;

/** Says why not: what, given, allowed and mend of every bad field. */
final class Refusals {
    private Refusals() {}

    /** JSON belongs to standard output, where a program reads; sentences to standard error. */
    static Exit say(List<Finding> findings, boolean json, Terminal terminal) {
        if (json) {
            terminal.out().println(JsonAnswer.refusal(findings));
        } else {
            findings.forEach(finding -> terminal.err().println(finding.sentence()));
        }
        return Exit.REFUSED;
    }
}
