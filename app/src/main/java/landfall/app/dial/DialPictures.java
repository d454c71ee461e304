// SPDX-License-Identifier: Apache-2.0
package landfall.app.dial;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.ask.Dialled;
import landfall.dialling.DialFindings;
import landfall.quantity.UnitSystem;
import landfall.sheets.dialling.EdgesView;
import landfall.sheets.dialling.LandPlot;
import landfall.sheets.dialling.LandTold;
import landfall.sheets.dialling.ReadFaces;
import landfall.sheets.dialling.ReadRows;
import landfall.sheets.dialling.Turns;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;

/**
 * What the page shows of a set of readings besides its figures.
 *
 * @param lands the faces, land by land
 * @param sketches readings against the fit, edges round the tap
 * @param turns what to turn, in order
 * @param rows the readings as a table
 * @param heading what was read, in words
 */
public record DialPictures(
        List<OfLand> lands, List<Drawing> sketches, List<Turns.Turn> turns, List<ReadRows.Row> rows, Heading heading) {
    /** The faces of one land, and what was found of it. */
    public record OfLand(int land, String told, List<Drawing> faces) {}

    /**
     * What was read, in words.
     *
     * @param wanted whether it is known what the dial should read
     * @param zero the mean of the edges in the dial's own zero
     */
    public record Heading(String place, int readings, int lands, boolean wanted, String zero, UnitSystem units) {
        public String unit() {
            return new Figures(units).unit();
        }
    }

    static DialPictures of(Dialled dialled) {
        DialFindings found = dialled.found().value();
        Figures figures = new Figures(dialled.units());
        ReadFaces faces = new ReadFaces(dialled.ask(), found);
        List<OfLand> lands = new ArrayList<>();
        for (ReadFaces.Row row : faces.rows()) {
            lands.add(new OfLand(
                    row.land(), LandTold.of(found, row.land(), figures), faces.draw(row, "dial", Ink.SCREEN)));
        }
        List<Drawing> sketches = new ArrayList<>(List.of(new LandPlot(found, figures).draw("plot", Ink.SCREEN)));
        if (EdgesView.isTold(found)) {
            EdgesView.Round round = new EdgesView.Round(
                    dialled.ask().tap().flutes(),
                    dialled.ask().tap().land(),
                    dialled.tap().thread().hand());
            sketches.add(new EdgesView(found, round, figures).draw("edges", Ink.SCREEN));
        }
        return new DialPictures(
                lands,
                sketches,
                Turns.of(found, dialled.ask().readings().resolution(), figures),
                ReadRows.of(found, figures),
                heading(dialled, figures));
    }

    private static Heading heading(Dialled dialled, Figures figures) {
        DialFindings found = dialled.found().value();
        return new Heading(
                found.place().code(),
                found.course().readings().size(),
                found.course().lands().size(),
                !found.targets().isEmpty(),
                figures.signed(found.course().zero()) + " " + figures.unit(),
                dialled.units());
    }
}
