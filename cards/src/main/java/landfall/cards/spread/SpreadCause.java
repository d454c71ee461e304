// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import landfall.spread.Sensitivity;
import landfall.spread.Summary;

/** How much of a result's spread a field has part in; one field alone has all of it. */
public record SpreadCause(Watched watched, Varied varied, Sensitivity found) {
    /** By result, the field that matters most first. */
    public static List<SpreadCause> of(SpreadSetup setup, Summary summary) {
        List<SpreadCause> all = new ArrayList<>();
        for (int result = 0; result < setup.watched().size(); result++) {
            List<SpreadCause> causes = new ArrayList<>();
            for (int input = 0; input < setup.varied().size(); input++) {
                Sensitivity found = summary.sensitivity(result, input);
                if (found != null) {
                    causes.add(new SpreadCause(
                            setup.watched().get(result), setup.varied().get(input), found));
                }
            }
            causes.sort(Comparator.comparingDouble(
                    (SpreadCause cause) -> -cause.found().total()));
            all.addAll(causes);
        }
        return all;
    }
}
