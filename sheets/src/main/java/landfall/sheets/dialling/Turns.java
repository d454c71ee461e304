// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dialling;

import java.util.List;
import landfall.dialling.Correction;
import landfall.dialling.DialFindings;
import landfall.quantity.Length;
import landfall.sheets.figure.Figures;

/** The corrections in words, in the order in which they are made. */
public final class Turns {
    private Turns() {}

    /**
     * One correction.
     *
     * @param by how much, with its unit; empty when there is no amount
     * @param beside the same in the other unit, in divisions of the dial and in turns of the screw; empty when there is
     *     no length
     */
    public record Turn(String act, String by, String beside) {}

    /** What to turn, first things first. */
    public static List<Turn> of(DialFindings found, Length division, Figures figures) {
        return found.corrections().stream()
                .map(correction -> turn(correction, division, figures))
                .toList();
    }

    private static Turn turn(Correction correction, Length division, Figures figures) {
        Length length = correction.length();
        if (length != null) {
            String divisions = Figures.number(length.over(division), 1) + " div";
            Double turns = correction.turns();
            String screw = turns == null ? "" : ", " + Figures.number(turns, 2) + " turn of its screw";
            return new Turn(
                    correction.act(),
                    figures.length(length),
                    figures.other().length(length) + ", " + divisions + screw);
        }
        String by = correction.angle() == null ? "" : figures.fineAngle(correction.angle());
        return new Turn(correction.act(), by, "");
    }
}
