// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.ArrayList;
import java.util.List;
import landfall.envelope.ChamferFound;
import landfall.envelope.GrindRun;
import landfall.envelope.LandGround;
import landfall.fault.Caution;
import landfall.grind.GrindSetup;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.grind.Sketches;

/** Puts a run into the words and figures of the sheet: what the lands should be found to be. */
final class RunWords {
    private final GrindSetup setup;
    private final GrindRun run;
    private final Figures figures;

    RunWords(GrindSetup setup, GrindRun run, Figures figures) {
        this.setup = setup;
        this.run = run;
        this.figures = figures;
    }

    SheetContent.Run run() {
        String unit = figures.unit();
        return new SheetContent.Run(
                new Sketches(setup, figures, "sketch").gaps(run, Ink.PAPER),
                List.of(
                        "land",
                        "working relief",
                        "fall at the heel, " + unit,
                        "least gap, " + unit,
                        "edge proud, " + unit,
                        "chamfer, " + unit,
                        "share of the cut"),
                lands(),
                said());
    }

    private List<List<String>> lands() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < run.middle().lands().size(); i++) {
            LandGround land = run.middle().lands().get(i);
            double share = 100 * run.middle().shares().get(i).share();
            rows.add(List.of(
                    String.valueOf(land.land()),
                    figures.angle(land.working()),
                    figures.bare(land.fall()),
                    figures.bare(land.leastGap()),
                    figures.signed(land.edge()),
                    figures.bare(run.found().lands().get(i).length()),
                    Figures.number(share, 1) + " %"));
        }
        return rows;
    }

    private List<String> said() {
        ChamferFound found = run.found();
        List<String> said = new ArrayList<>();
        said.add("Chamfer that comes out %s; a swivel of %s brings out what is wanted."
                .formatted(figures.fineAngle(found.angle()), figures.fineAngle(found.swivel())));
        said.add("Taken off the next edge by the cam coming back: %s.".formatted(figures.length(run.clipped())));
        for (Caution caution : run.cautions(setup)) {
            said.add(caution.text());
        }
        return said;
    }
}
