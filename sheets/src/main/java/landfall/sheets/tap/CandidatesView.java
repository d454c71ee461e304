// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.tap;

import java.util.ArrayList;
import java.util.List;
import landfall.identity.Candidate;
import landfall.identity.Identification;
import landfall.quantity.Length;
import landfall.sheets.draw.Dimensions;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Scale;
import landfall.sheets.draw.Spot;
import landfall.sheets.figure.Figures;

/**
 * Where the crest that was measured stands against the nominal size of each thread that it may be, on one scale: a
 * fresh tap stands a little over its nominal, a worn one at or under it. The strip is the measured diameter with its
 * uncertainty.
 */
public final class CandidatesView {
    private static final Lettering NOTE = Lettering.NOTE.sized(Lettering.FIGURE.size());
    private static final double WIDTH = 94;
    private static final double LEFT = 42;
    private static final double ROOM = 34;
    private static final double TOP = 22;
    private static final double ROW = 7;
    private static final int SHOWN = 5;
    private static final double FARTHEST_PITCHES = 0.6;

    private final Length seen;
    private final Length uncertainty;
    private final List<Candidate> candidates;
    private final Figures figures;
    private final Scale scale;
    private final double middleX;

    public CandidatesView(Identification found, Length seen, Length uncertainty, Figures figures) {
        this.seen = seen;
        this.uncertainty = uncertainty;
        this.figures = figures;
        this.candidates = found.candidates().stream().limit(SHOWN).toList();
        double left = uncertainty.mm();
        double right = uncertainty.mm();
        for (Candidate candidate : candidates) {
            double over = candidate.overNominal().mm();
            double farthest = candidate.callOut().thread().pitch().mm() * FARTHEST_PITCHES;
            left = Math.max(left, Math.min(over, farthest));
            right = Math.max(right, Math.min(-over, farthest));
        }
        this.scale = Scale.fitting(Length.ofMm(left + right), ROOM);
        double slack = ROOM - (left + right) * scale.ratio();
        this.middleX = LEFT + slack / 2 + left * scale.ratio();
    }

    public Scale scale() {
        return scale;
    }

    public Drawing draw(String id, Ink ink) {
        double foot = TOP + ROW * candidates.size();
        Drawing drawing = new Drawing(
                id, "Crest against nominal, " + scale.words(), description(), Spot.at(WIDTH, foot + 12), ink);
        drawing.text(
                Spot.at(0, 3.6),
                "Crest against nominal  %s  (%s)".formatted(scale.words(), figures.unit()),
                NOTE.bold());
        double half = scale.paper(uncertainty);
        drawing.fill(Outline.rectangle(Spot.at(middleX - half, TOP - 4), 2 * half, foot - TOP + 4), Fill.TINT);
        drawing.line(Spot.at(middleX, TOP - 6), Spot.at(middleX, foot), Line.OUTLINE);
        drawing.text(Spot.at(middleX, TOP - 11.5), "measured", NOTE.middle());
        drawing.text(Spot.at(middleX, TOP - 7), figures.diameter(seen), Lettering.FIGURE);
        for (int i = 0; i < candidates.size(); i++) {
            row(drawing, candidates.get(i), TOP + ROW * (i + 0.6));
        }
        drawing.text(Spot.at(0, foot + 5), "Tick: nominal size. Strip: measured, with its uncertainty.", NOTE);
        drawing.text(Spot.at(0, foot + 9.8), "Arrow: how far the crest stands from nominal.", NOTE);
        return drawing;
    }

    private String description() {
        List<String> words = new ArrayList<>();
        candidates.forEach(candidate -> words.add("%s nominal %s, crest %s"
                .formatted(
                        candidate.name(),
                        figures.length(candidate.callOut().thread().major()),
                        figures.signed(candidate.overNominal()))));
        return "Measured " + figures.length(seen) + ". " + String.join("; ", words) + ".";
    }

    private void row(Drawing drawing, Candidate candidate, double y) {
        drawing.text(Spot.at(0, y + 1.25), candidate.name(), NOTE.bold());
        double x = middleX - scale.paper(candidate.overNominal());
        drawing.line(Spot.at(LEFT, y), Spot.at(LEFT + ROOM, y), Line.THIN);
        if (x < LEFT - 0.1 || x > LEFT + ROOM + 0.1) {
            drawing.text(Spot.at(WIDTH, y + 1.25), figures.signed(candidate.overNominal()), Lettering.FIGURE.end());
            return;
        }
        drawing.line(Spot.at(x, y - 2.2), Spot.at(x, y + 2.2), Line.OUTLINE);
        if (Math.abs(middleX - x) > 2.6) {
            new Dimensions(drawing).arrowhead(Spot.at(middleX, y), middleX > x ? 0 : 180);
        }
        drawing.text(Spot.at(WIDTH, y + 1.25), figures.signed(candidate.overNominal()), Lettering.FIGURE.end());
    }
}
