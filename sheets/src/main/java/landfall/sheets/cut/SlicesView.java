// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.cut;

import java.util.List;
import landfall.chip.ChipFlow;
import landfall.chip.ChipLoad;
import landfall.chip.Slice;
import landfall.cut.CutForecast;
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
import landfall.tap.Tap;

/**
 * What the teeth of the chamfer take, in the axial plane, point to the left. Above: the chamfer in the wall of the hole
 * at one moment, each thread of it with the slices of the last turn. Below: one groove magnified, with every slice from
 * first touch to full depth, numbered by tooth. The darker the larger.
 */
public final class SlicesView {
    public static final double WIDTH = 88;

    private static final double RUN_TOP = 13;
    private static final double RUN_WIDE = 84;
    private static final double RUN_HIGH = 16;
    private static final double GROOVE_HIGH = 31;
    private static final double GROOVE_WIDE = 58;
    private static final double GROOVE_X = 36;
    private static final double WALL = 4;

    private final Tap tap;
    private final ChipLoad load;
    private final ChipFlow flow;
    private final Figures figures;
    private final Length hole;
    private final Scale run;
    private final Scale groove;
    private final double largest;

    public SlicesView(Tap tap, CutForecast cut, Figures figures) {
        this.tap = tap;
        this.load = cut.chips().load();
        this.flow = cut.chips().flow();
        this.hole = cut.wish().hole();
        this.figures = figures;
        this.run = Scale.fitting(runLength(), RUN_WIDE)
                .orSmaller(Scale.fitting(load.groove().depth(), RUN_HIGH - WALL));
        this.groove = Scale.fitting(load.groove().depth(), GROOVE_HIGH)
                .orSmaller(Scale.fitting(load.groove().holeWidth(), GROOVE_WIDE));
        this.largest = load.slices().stream()
                .mapToDouble(slice -> slice.area().mm2())
                .max()
                .orElseThrow();
    }

    public Scale scale() {
        return groove;
    }

    private double runFoot() {
        return RUN_TOP + WALL + run.paper(load.groove().depth());
    }

    private double grooveTop() {
        return runFoot() + 18;
    }

    private Spot size() {
        return Spot.at(WIDTH, grooveTop() + groove.paper(load.groove().depth()) + 12.5);
    }

    /** From a pitch before the first slice to a pitch and a half behind the last. */
    private Length runLength() {
        Length pitch = tap.thread().lead().perTurn();
        return load.steps().spacing().times(load.slices().size() - 1).plus(pitch.times(3));
    }

    public Drawing draw(String id, Ink ink) {
        Drawing drawing = new Drawing(id, "Chips of the chamfer, " + groove.words(), description(), size(), ink);
        drawing.text(
                Spot.at(0, 3.6),
                "Chips in the chamfer, axial plane  " + run.words() + "  (" + figures.unit() + ")",
                Lettering.NOTE.bold());
        new ChamferRun(tap, load, run, Spot.at(0, runFoot())).draw(drawing, this::step);
        flow(drawing);
        drawing.text(
                Spot.at(0, grooveTop() - 7.4), "One groove, tooth by tooth  " + groove.words(), Lettering.NOTE.bold());
        grooveLines(drawing);
        for (Slice slice : load.slices()) {
            Outline outline = outline(slice);
            drawing.fill(outline, step(slice)).path(outline, Line.FINE);
        }
        numbers(drawing);
        foot(drawing);
        return drawing;
    }

    private String description() {
        Slice most = most();
        return "%d teeth cut one groove. The largest slice is that of tooth %d. Chips %s."
                .formatted(load.slices().size(), most.tooth(), flowWords());
    }

    private Slice most() {
        return load.slices().stream()
                .filter(slice -> slice.area().mm2() == largest)
                .findFirst()
                .orElseThrow();
    }

    private Fill step(Slice slice) {
        return Fill.step(slice.area().mm2() / largest * 0.999);
    }

    private String flowWords() {
        return switch (flow) {
            case BACK -> "come back out of the hole";
            case FORWARD -> "go ahead of the tap";
            case STAYS -> "stay in the flutes";
        };
    }

    /** Towards the shank is to the right. */
    private void flow(Drawing drawing) {
        double y = 8.8;
        double width = Lettering.NOTE.width("chips " + flowWords());
        Spot text = Spot.at(14, y + Lettering.NOTE.capHeight() / 2);
        drawing.text(text, "chips " + flowWords(), Lettering.NOTE);
        Dimensions arrows = new Dimensions(drawing);
        switch (flow) {
            case FORWARD -> {
                drawing.line(Spot.at(12.5, y), Spot.at(2, y), Line.OUTLINE);
                arrows.arrowhead(Spot.at(0.6, y), 180);
            }
            case BACK -> {
                drawing.line(Spot.at(15.5 + width, y), Spot.at(26 + width, y), Line.OUTLINE);
                arrows.arrowhead(Spot.at(27.4 + width, y), 0);
            }
            case STAYS -> drawing.circle(Spot.at(10.5, y), 1.1, Line.OUTLINE);
        }
    }

    /** In the magnified groove. */
    private Spot at(double along, double radius) {
        double crest = tap.thread().major().mm() / 2;
        return Spot.at(GROOVE_X + along * groove.ratio(), grooveTop() + (crest - radius) * groove.ratio());
    }

    private Outline outline(Slice slice) {
        return Outline.through(slice.outline().stream()
                        .map(corner -> at(corner.along().mm(), corner.radius().mm()))
                        .toList())
                .close();
    }

    private void grooveLines(Drawing drawing) {
        double wide = load.groove().holeWidth().mm() / 2;
        double narrow = load.groove().crestWidth().mm() / 2;
        double crest = tap.thread().major().mm() / 2;
        double wall = hole.mm() / 2;
        Spot left = at(-wide, wall);
        Spot right = at(wide, wall);
        double foot = left.y();
        Outline metal = Outline.through(List.of(
                        Spot.at(1, foot),
                        left,
                        at(-narrow, crest),
                        at(narrow, crest),
                        right,
                        Spot.at(WIDTH - 17, foot),
                        Spot.at(WIDTH - 17, grooveTop() - WALL),
                        Spot.at(1, grooveTop() - WALL)))
                .close();
        drawing.hatch(metal, 2.6);
        drawing.path(
                Outline.through(List.of(
                        Spot.at(0, foot),
                        left,
                        at(-narrow, crest),
                        at(narrow, crest),
                        right,
                        Spot.at(WIDTH - 15, foot))),
                Line.OUTLINE);
        drawing.line(left, right, Line.THIN);
        drawing.text(Spot.at(WIDTH - 14, foot + 1.2), figures.diameter(hole), Lettering.NOTE);
        Spot top = at(narrow, crest);
        drawing.line(top, Spot.at(WIDTH - 15, top.y()), Line.THIN);
        drawing.text(
                Spot.at(WIDTH - 14, top.y() + 1.2),
                figures.diameter(tap.thread().major()),
                Lettering.NOTE);
    }

    private void numbers(Drawing drawing) {
        SliceNumbers numbers = new SliceNumbers(load, this::at);
        numbers.draw(drawing);
    }

    private void foot(Drawing drawing) {
        Slice most = most();
        String first = "%d teeth, thickness %s, step %s"
                .formatted(
                        load.slices().size(),
                        figures.length(load.steps().thickness()),
                        figures.bare(load.steps().radial()));
        String second = "largest: tooth %d, %s".formatted(most.tooth(), figures.area(most.area()));
        drawing.text(Spot.at(0, size().y() - 5.2), first, Lettering.NOTE);
        drawing.text(Spot.at(0, size().y() - 1), second, Lettering.NOTE);
    }
}
