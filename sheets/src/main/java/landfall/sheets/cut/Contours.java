// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.cut;

import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.sheets.draw.LevelLines;
import landfall.torsion.Place;
import landfall.torsion.Section;
import landfall.torsion.StressField;

/**
 * Lines of equal stress by marching squares on a square grid over the section. Outside the field goes on with the
 * stress of the nearest place of the outline, so that lines reach the outline squarely; round it lies a hem of nought,
 * so that all lines close. What stands outside the section is blanked out by who draws them.
 */
final class Contours {
    private static final int CELLS = 64;
    private static final int LOOKS = 120;
    private static final double HEM = -1;

    private final StressField field;
    private final Section section;
    private final double reach;
    private final double[][] shares = new double[CELLS + 1][CELLS + 1];

    Contours(StressField field, Section section) {
        this.field = field;
        this.section = section;
        this.reach = section.outer().mm() / 2 * 1.09;
        for (int i = 0; i <= CELLS; i++) {
            for (int j = 0; j <= CELLS; j++) {
                Place place = place(i, j);
                boolean hem = place.radius().mm() > reach * (1 - 1.5 / CELLS);
                shares[i][j] = hem ? HEM : field.at(place) / section.stress();
            }
        }
    }

    private Place place(double i, double j) {
        return new Place(Length.ofMm(reach * (2 * i / CELLS - 1)), Length.ofMm(reach * (2 * j / CELLS - 1)));
    }

    /** How far out on a ray from the axis the stress first reaches a share of the peak. */
    Length crossing(double share, Angle angle) {
        Length radius = section.outer().times(0.5);
        for (int i = 1; i <= LOOKS; i++) {
            Length at = radius.times((double) i / LOOKS);
            if (field.at(Place.polar(at, angle)) / section.stress() >= share) {
                return at;
            }
        }
        return radius;
    }

    /** Closed lines round what is over a share of the peak, that on their left; round a hole the other way. */
    List<List<Place>> above(double share) {
        return new LevelLines(shares)
                .above(share).stream()
                        .map(line -> line.stream()
                                .map(spot -> place(spot.x(), spot.y()))
                                .toList())
                        .toList();
    }
}
