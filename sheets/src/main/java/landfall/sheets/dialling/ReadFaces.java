// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dialling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import landfall.dialling.DialAsk;
import landfall.dialling.DialFindings;
import landfall.dialling.FitCourse;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.sheets.dial.DialFace;
import landfall.sheets.dial.DialKind;
import landfall.sheets.dial.Needle;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;

/**
 * The dial as it was read on each land: at the edge, at mid-land and at the heel, or as near to them as was read. Black
 * needle where it should stand, hollow needle where it stood, and how far to bring it in divisions.
 */
public final class ReadFaces {
    /** As near as a graduation can be read by eye. */
    private static final double READ_BY_EYE = 0.5;

    private final DialAsk ask;
    private final DialFindings found;
    private final DialKind kind;

    public ReadFaces(DialAsk ask, DialFindings found) {
        this.ask = ask;
        this.found = found;
        this.kind = DialKind.ofResolution(ask.readings().resolution());
    }

    /** The faces of one land, from edge to heel. */
    public record Row(int land, List<Needle> needles) {
        public Row {
            needles = List.copyOf(needles);
        }
    }

    /** The lands that were read, in order. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (FitCourse.OfLand land : found.course().lands()) {
            rows.add(new Row(land.land(), needles(land.land())));
        }
        return rows;
    }

    /** The faces of a row; ids begin with the prefix. */
    public List<Drawing> draw(Row row, String prefix, Ink ink) {
        DialFace face = new DialFace(kind);
        List<Drawing> drawings = new ArrayList<>();
        for (Needle needle : row.needles()) {
            drawings.add(face.draw(needle, "%s-%d-%d".formatted(prefix, row.land(), drawings.size() + 1), ink));
        }
        return drawings;
    }

    private List<Needle> needles(int land) {
        List<FitCourse.At> read = found.course().readings().stream()
                .filter(at -> at.reading().land() == land)
                .toList();
        double whole = ask.tap().land().deg();
        List<FitCourse.At> shown = new ArrayList<>();
        for (double deg : new double[] {0, whole / 2, whole}) {
            FitCourse.At nearest = read.stream()
                    .min(Comparator.comparingDouble(at -> Math.abs(angle(at).deg() - deg)))
                    .orElseThrow();
            if (shown.stream().noneMatch(other -> angle(other).equals(angle(nearest)))) {
                shown.add(nearest);
            }
        }
        return shown.stream().map(at -> needle(land, at)).toList();
    }

    private Needle needle(int land, FitCourse.At at) {
        String where =
                "land " + land + " " + where(angle(at).deg() / ask.tap().land().deg());
        Length wanted = at.wanted();
        Length read = at.reading().value();
        return wanted == null
                ? Needle.onlyRead(where, angle(at), read)
                : Needle.of(where, angle(at), wanted).read(read, mend(wanted.minus(read)));
    }

    /** By the share of the land: a reading in the first or last fifth is called by the edge or the heel. */
    private static String where(double share) {
        if (share < 0.2) {
            return "edge";
        }
        return share > 0.8 ? "heel" : "mid-land";
    }

    private String mend(Length off) {
        return Math.abs(off.over(ask.readings().resolution())) <= READ_BY_EYE
                ? "as it should, to half a division"
                : "bring it " + kind.turnsAndDivisions(off);
    }

    private static Angle angle(FitCourse.At at) {
        return at.reading().angle();
    }
}
