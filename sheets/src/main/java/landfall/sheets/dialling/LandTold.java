// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dialling;

import java.util.ArrayList;
import java.util.List;
import landfall.dialling.DialFindings;
import landfall.dialling.Fitted;
import landfall.dialling.LandFound;
import landfall.dialling.LoadShare;
import landfall.sheets.figure.Figures;

/** What was found of one land, in a line. */
public final class LandTold {
    private LandTold() {}

    /** Such as {@code edge +0.021 ± 0.004 mm, cuts 42.5 % of the chip}; empty when nothing was. */
    public static String of(DialFindings found, int land, Figures figures) {
        List<String> told = new ArrayList<>();
        for (LandFound one : found.lands().lands()) {
            Fitted edge = one.edge();
            if (one.land() == land && edge != null) {
                told.add("edge %s \u00b1 %s"
                        .formatted(figures.signed(edge.value()), figures.length(edge.uncertainty())));
            }
            LoadShare share = one.share();
            if (one.land() == land && share != null) {
                told.add("cuts %s \u00b1 %s %% of the chip"
                        .formatted(Figures.number(share.percent(), 0), Figures.number(share.uncertainty(), 0)));
            }
        }
        return String.join(", ", told);
    }
}
