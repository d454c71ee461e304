// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.List;

/**
 * How many records a law rests on.
 *
 * @param runs with at least one hole
 * @param known of those, with a known life
 * @param broken that ended with a broken tap
 * @param about with a guess among their counts
 * @param unknownStart that began before the records did
 * @param untold without a material
 */
public record Records(int runs, int known, int broken, int about, int unknownStart, int untold) {
    static Records of(List<Brief> runs, List<Evidence> evidence) {
        int known = 0;
        int cut = 0;
        int broken = 0;
        int about = 0;
        int unknown = 0;
        int untold = 0;
        for (int i = 0; i < runs.size(); i++) {
            Brief run = runs.get(i);
            broken += run.span().end() == Run.End.BROKEN ? 1 : 0;
            if (!evidence.get(i).isNone()) {
                cut++;
                known += evidence.get(i).known() ? 1 : 0;
                about += run.about() ? 1 : 0;
                unknown += run.span().start() == Run.Start.UNKNOWN ? 1 : 0;
                untold += run.material().isEmpty() ? 1 : 0;
            }
        }
        return new Records(cut, known, broken, about, unknown, untold);
    }
}
