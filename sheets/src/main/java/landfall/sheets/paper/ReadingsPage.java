// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.List;
import landfall.dialling.DialFindings;
import landfall.dialling.Fitted;
import landfall.dialling.FittedAngle;
import landfall.dialling.ReliefFound;
import landfall.dialling.RunOut;
import landfall.fault.Caution;
import landfall.sheets.dial.DialKind;
import landfall.sheets.dialling.EdgesView;
import landfall.sheets.dialling.LandPlot;
import landfall.sheets.dialling.LandTold;
import landfall.sheets.dialling.ReadFaces;
import landfall.sheets.dialling.ReadRows;
import landfall.sheets.dialling.Turns;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.paper.DialSheet.Dialling;

/** Lays a dialling-in out as XHTML: first what to turn, then the dials land by land, then what it rests on. */
final class ReadingsPage {
    private final Dialling dialling;
    private final DialFindings found;
    private final SheetOrder order;
    private final Figures figures;
    private final StringBuilder page = new StringBuilder();

    ReadingsPage(Dialling dialling, SheetOrder order) {
        this.dialling = dialling;
        this.found = dialling.found();
        this.order = order;
        this.figures = new Figures(order.units());
    }

    String write() {
        String title = dialling.tap().callOut().normal();
        page.append("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n");
        page.append("<meta charset=\"UTF-8\"/>\n<title>").append(text(title));
        page.append(" dialling in</title>\n<style>\n").append(SheetStyle.of(order.paper(), order.foot()));
        page.append("</style>\n</head>\n<body>\n");
        head(title);
        turns();
        faces();
        pictures();
        told();
        readings();
        cautions();
        return page.append("</body>\n</html>\n").toString();
    }

    private void head(String title) {
        page.append("<table class=\"head\"><tr><td><h1>").append(text(title)).append("</h1><p>");
        page.append("%d readings on %d lands; dial %s (%s); one division %s."
                        .formatted(
                                found.course().readings().size(),
                                found.course().lands().size(),
                                text(found.place().stands()),
                                text(found.place().sign()),
                                division()))
                .append("</p></td><td class=\"right\"><p><b>Dialling in</b></p>");
        page.append("<p>tap no. ________ date ________</p></td></tr></table>\n");
    }

    /** In the unit that the dial is graduated in. */
    private String division() {
        DialKind kind = DialKind.ofResolution(dialling.ask().readings().resolution());
        return new Figures(kind.units()).length(kind.division());
    }

    private void turns() {
        page.append("<h2>What to turn, in this order</h2>\n");
        List<Turns.Turn> turns = Turns.of(found, dialling.ask().readings().resolution(), figures);
        if (turns.isEmpty()) {
            page.append("<p>Nothing: what is off lies inside the uncertainty of these readings.</p>\n");
            return;
        }
        page.append("<table class=\"steps turns\">\n<colgroup><col class=\"tick\"/><col class=\"count\"/><col/>");
        page.append("<col class=\"by\"/><col class=\"beside\"/></colgroup>\n");
        int count = 0;
        for (Turns.Turn turn : turns) {
            count++;
            page.append("<tr><td class=\"tick\"><span class=\"box\"></span></td><td class=\"count\">")
                    .append(count);
            page.append("</td><td>")
                    .append(text(turn.act()))
                    .append("</td><td class=\"by\">")
                    .append(text(turn.by()));
            page.append("</td><td class=\"beside\">")
                    .append(text(turn.beside()))
                    .append("</td></tr>\n");
        }
        page.append("</table>\n");
    }

    private void faces() {
        page.append("<h2>What the dial should read, and what it read</h2>\n<p class=\"notes\">");
        page.append(
                found.targets().isEmpty()
                        ? "Hollow needle: what was read. Without a fixture it is not known where it should stand."
                        : "Black needle: where it should stand. Hollow needle: what was read. Every edge should read "
                                + figures.signed(found.course().zero()) + " " + figures.unit()
                                + ", the mean of the edges in the zero that the dial was set to.");
        page.append("</p>\n<table class=\"faces\">\n");
        ReadFaces faces = new ReadFaces(dialling.ask(), found);
        for (ReadFaces.Row row : faces.rows()) {
            page.append("<tr><td class=\"land\"><b>Land ").append(row.land()).append("</b><br/>");
            page.append(text(LandTold.of(found, row.land(), figures))).append("<br/><br/>now ________</td>");
            faces.draw(row, "dial", Ink.PAPER)
                    .forEach(face -> page.append("<td>").append(face.svg()).append("</td>"));
            page.append("</tr>\n");
        }
        page.append("</table>\n");
    }

    private void pictures() {
        Drawing plot = new LandPlot(found, figures).draw("plot", Ink.PAPER);
        page.append("<h2>Readings against the fit</h2>\n<table class=\"pictures whole\"><tr><td>");
        page.append(plot.svg()).append("</td><td>");
        if (EdgesView.isTold(found)) {
            EdgesView.Round round = new EdgesView.Round(
                    dialling.ask().tap().flutes(),
                    dialling.ask().tap().land(),
                    dialling.tap().thread().hand());
            page.append(new EdgesView(found, round, figures)
                    .draw("edges", Ink.PAPER)
                    .svg());
        }
        page.append("</td></tr></table>\n");
    }

    /** What the readings tell, with its uncertainty (95 %). */
    private void told() {
        page.append("<table class=\"facts\">\n");
        fact("Slope", fitted(found.slope()) + " a radian of land");
        RunOut runOut = found.runOut();
        if (runOut != null) {
            FittedAngle way = runOut.direction();
            String high = way == null
                    ? "; its direction is not told"
                    : "; high side " + angle(way) + " behind the edge of land 1";
            fact("Eccentric", fitted(runOut.eccentricity()) + high);
        }
        ReliefFound relief = found.relief();
        if (relief != null) {
            fact(
                    "Relief",
                    "working %s, wanted %s".formatted(angle(relief.working()), figures.fineAngle(relief.wanted())));
        }
        page.append("</table>\n");
    }

    private void fact(String name, String said) {
        page.append("<tr><td class=\"name\">").append(name).append("</td><td>").append(text(said));
        page.append("</td></tr>\n");
    }

    private String fitted(Fitted fitted) {
        return figures.signed(fitted.value()) + " \u00b1 " + figures.length(fitted.uncertainty());
    }

    private String angle(FittedAngle angle) {
        return figures.fineAngle(angle.value()) + " \u00b1 " + figures.fineAngle(angle.uncertainty());
    }

    private void readings() {
        boolean wanted = !found.targets().isEmpty();
        page.append("<h2>Every reading (").append(figures.unit()).append(")</h2>\n<table class=\"every\"><tr>");
        page.append("<th>land</th><th>angle</th><th>read</th>").append(wanted ? "<th>should</th><th>off</th>" : "");
        page.append("<th>fit leaves</th><th class=\"note\">mark</th><th class=\"note\">read again</th></tr>\n");
        for (ReadRows.Row row : ReadRows.of(found, figures)) {
            page.append("<tr><td>").append(row.land()).append("</td><td>").append(row.angle());
            page.append("</td><td>").append(row.read()).append("</td>");
            if (wanted) {
                page.append("<td>").append(row.against().should()).append("</td><td>");
                page.append(row.against().off()).append("</td>");
            }
            page.append("<td>").append(row.against().left()).append("</td><td class=\"note\">");
            page.append(row.outlier() ? "<b>\u25a3 outlier</b>" : "").append("</td><td class=\"note\"></td></tr>\n");
        }
        page.append("</table>\n");
    }

    private void cautions() {
        if (dialling.cautions().isEmpty()) {
            return;
        }
        page.append("<h2>What these readings cannot tell, and cautions</h2>\n");
        for (Caution caution : dialling.cautions()) {
            page.append("<p class=\"notes\">\u26a0 ")
                    .append(text(caution.text()))
                    .append("</p>\n");
        }
    }

    private static String text(String plain) {
        return SheetParts.text(plain);
    }
}
