// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.ArrayList;
import java.util.List;
import landfall.sheets.figure.Figures;
import landfall.sheets.paper.TappingContent.Line;
import landfall.working.Step;

/** The chief steps of a cut's working, in the order in which they were worked out. The answer has all of them. */
final class ShortWorking {
    private static final List<String> CHIEF =
            List.of("p_t", "h", "A_1", "A_all", "T_s", "T", "T_h", "f_w", "B_l", "m_l", "v", "n", "z_l", "t_all");

    private final List<Step> working;

    ShortWorking(List<Step> working) {
        this.working = working;
    }

    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (Step step : working) {
            if (CHIEF.contains(step.symbol()) && step.rule().isComputed()) {
                String unit =
                        step.rule().unit().equals("1") ? "" : " " + step.rule().unit();
                lines.add(new Line(
                        step.rule().means(),
                        step.symbol() + " = " + step.rule().formula(),
                        Figures.significant(step.value(), 4) + unit,
                        from(step)));
            }
        }
        return lines;
    }

    /** Key of the source and how far it is to be trusted, once where both say the same. */
    private static String from(Step step) {
        String key = step.rule().source().key();
        String trust = step.rule().trust().words();
        return key.replace('-', ' ').equals(trust) ? trust : key + ", " + trust;
    }
}
