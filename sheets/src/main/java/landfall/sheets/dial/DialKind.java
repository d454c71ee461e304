// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dial;

import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.sheets.figure.Figures;

/**
 * The dial that the shop has.
 *
 * @param division what one graduation stands for
 * @param divisions graduations in one turn of the needle, a multiple of ten from 20 to 200
 * @param numbering continuous (0 to 90 round) or balanced (0 to 50 both ways)
 */
public record DialKind(Length division, int divisions, Numbering numbering) {
    /** How the graduations are numbered. */
    public enum Numbering {
        CONTINUOUS,
        BALANCED
    }

    public DialKind {
        if (division.mm() <= 0) {
            throw new OutOfRange("dial division", division.mm() + " mm", "more than 0", "read it off the dial's face");
        }
        if (divisions < 20 || divisions > 200 || divisions % 10 != 0) {
            throw new OutOfRange(
                    "dial divisions in one turn",
                    Integer.toString(divisions),
                    "a multiple of ten from 20 to 200",
                    "count the graduations once round the face");
        }
    }

    /** A hundred divisions a turn: 1 mm for a 0.01 mm dial, .1 in for a .001 in dial, as such dials commonly are. */
    public static DialKind ofResolution(Length resolution) {
        return new DialKind(resolution, 100, Numbering.CONTINUOUS);
    }

    /**
     * Metric when the division is a whole number of tenths of a micrometre, but not of halves of a thousandth of an
     * inch (12.7 µm): no dial is graduated in 0.0127 mm.
     */
    public UnitSystem units() {
        double tenths = division.mm() * 10_000;
        return Math.abs(tenths - Math.rint(tenths)) < 1e-6 && Math.rint(tenths) % 127 != 0
                ? UnitSystem.METRIC
                : UnitSystem.INCH;
    }

    public Length perTurn() {
        return division.times(divisions);
    }

    /** Where the needle stands, in degrees clockwise from the zero at the top; more than 360 for more than one turn. */
    double needleDeg(Length reading) {
        return 360 * reading.over(perTurn());
    }

    /** As printed on the face without its unit, such as {@code 0.01}. */
    String divisionWords() {
        return units() == UnitSystem.INCH ? Figures.plain(division.inch(), 5) : Figures.plain(division.mm(), 4);
    }

    /** The numeral at a graduation. */
    String numeral(int graduation) {
        int shown = numbering == Numbering.BALANCED ? Math.min(graduation, divisions - graduation) : graduation;
        return Integer.toString(shown);
    }

    /** The reading as whole turns and divisions, such as {@code 2 turns + 32.6 div back}; forward is clockwise. */
    public String turnsAndDivisions(Length reading) {
        double all = Math.abs(reading.over(division));
        int turns = (int) Math.floor((all + 1e-6) / divisions);
        double rest = Math.max(0, all - (double) turns * divisions);
        String way = reading.mm() < 0 ? " back" : " forward";
        if (all < 0.05) {
            return "needle at 0";
        }
        String divs = Figures.plain(rest, 1) + " div";
        if (turns == 0) {
            return divs + way;
        }
        return turns + (turns == 1 ? " turn + " : " turns + ") + divs + way;
    }
}
