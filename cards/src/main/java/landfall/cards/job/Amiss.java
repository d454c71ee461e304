// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.fault.Finding;

/**
 * What is wrong with a job that was given.
 *
 * @param at the line of what was given, as {@link HoleRow#at()}; 0 for the job as a whole
 * @param finding its field is the column's name
 */
public record Amiss(int at, Finding finding) {
    private static final Pattern OF_A_LINE = Pattern.compile("holes\\.(\\d+)\\.(.+)");

    /**
     * Findings of the engine and of forms, whose fields read {@code holes.2.depth}, by the rows that they belong to.
     */
    static List<Amiss> of(List<Finding> findings, List<HoleRow> rows) {
        List<Amiss> all = new ArrayList<>();
        for (Finding found : findings) {
            Matcher line = OF_A_LINE.matcher(found.field());
            if (line.matches()) {
                int at = rows.get(Integer.parseInt(line.group(1)) - 1).at();
                all.add(new Amiss(at, new Finding(line.group(2), found.given(), found.why(), found.mend())));
            } else {
                all.add(new Amiss(0, found));
            }
        }
        return all;
    }

    /** A finding whose field says the line too: {@code line 4, depth}. */
    public Finding placed() {
        return at == 0
                ? finding
                : new Finding("line " + at + ", " + finding.field(), finding.given(), finding.why(), finding.mend());
    }
}
