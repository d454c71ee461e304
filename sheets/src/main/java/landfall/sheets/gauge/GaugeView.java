// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.gauge;

import java.util.ArrayList;
import java.util.List;
import landfall.gauge.ThreadGauges;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Scale;
import landfall.sheets.draw.Spot;
import landfall.sheets.draw.Stacked;
import landfall.sheets.figure.Figures;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import org.jspecify.annotations.Nullable;

/**
 * The gauges for one side of a thread as zones on one scale: left the pitch diameter with GO and NOT GO, right the
 * plain diameter with its pins or rings. The product's own zone is hatched, a gauge's is solid; a gauge without a
 * tolerance is a line.
 */
public final class GaugeView {
    public static final Spot SIZE = Spot.at(94, 80);

    private static final Lettering NOTE = Lettering.NOTE.sized(Lettering.FIGURE.size());
    private static final double TOP = 18;
    private static final double FOOT = 68;
    private static final double ROOM = 40;
    private static final double GROUP = 45.5;
    private static final double PRODUCT = 6;
    private static final double GAUGE = 4;

    private final Figures figures;
    private final Side side;
    private final Scale scale;
    private final List<Group> groups;

    /** One diameter of the product and its two gauges. */
    private record Group(
            String name,
            Limits product,
            Limits go,
            @Nullable Limits notGo) {}

    public GaugeView(SideLimits product, ThreadGauges gauges, Figures figures) {
        this.figures = figures;
        this.side = gauges.side();
        Length plainGo = gauges.plain().go();
        Length plainNotGo = gauges.plain().notGo();
        boolean hole = side == Side.INTERNAL;
        this.groups = List.of(
                new Group(
                        "pitch diameter",
                        product.pitch(),
                        gauges.go().pitch(),
                        gauges.notGo().pitch()),
                new Group(
                        hole ? "minor diameter" : "major diameter",
                        hole ? product.minor() : product.major(),
                        new Limits(plainGo, plainGo),
                        plainNotGo == null ? null : new Limits(plainNotGo, plainNotGo)));
        double widest =
                groups.stream().mapToDouble(group -> span(group.product)).max().orElseThrow();
        this.scale = Scale.fitting(Length.ofMm(widest), ROOM);
    }

    private static double span(Limits limits) {
        return limits.min() == null || limits.max() == null
                ? 0
                : limits.max().minus(limits.min()).mm();
    }

    public Scale scale() {
        return scale;
    }

    public Drawing draw(String id, Ink ink) {
        String kind = side == Side.INTERNAL ? "Plugs and pins" : "Rings";
        Drawing drawing = new Drawing(id, kind + ", diameters " + scale.words(), description(), SIZE, ink);
        drawing.text(
                Spot.at(0, 3.6), "%s, diameters  %s  (%s)".formatted(kind, scale.words(), figures.unit()), NOTE.bold());
        for (int i = 0; i < groups.size(); i++) {
            group(drawing, groups.get(i), i * GROUP);
        }
        key(drawing);
        return drawing;
    }

    private String description() {
        List<String> words = new ArrayList<>();
        for (Group group : groups) {
            String notGo = group.notGo == null ? "none held" : words(group.notGo);
            words.add("%s: product %s, GO %s, NOT GO %s"
                    .formatted(group.name, words(group.product), words(group.go), notGo));
        }
        return String.join("; ", words) + ".";
    }

    private String words(Limits limits) {
        String min = limits.min() == null ? "open" : figures.bare(limits.min());
        String max = limits.max() == null ? "open" : figures.bare(limits.max());
        return min.equals(max) ? min : min + " to " + max;
    }

    /** The middle of the product's zone stands in the middle of the view. */
    private double y(Group group, Length size) {
        Length least = group.product.min();
        Length most = group.product.max();
        Length near = least == null ? most : least;
        Length far = most == null ? least : most;
        if (near == null || far == null) {
            throw new IllegalStateException("a product without limits cannot be gauged");
        }
        return (TOP + FOOT) / 2 - scale.paper(size.minus(near).plus(size.minus(far))) / 2;
    }

    private void group(Drawing drawing, Group group, double x) {
        drawing.text(Spot.at(x, 10), group.name, NOTE.bold());
        List<Label> labels = new ArrayList<>();
        bar(drawing, group, group.product, x, PRODUCT);
        double goX = x + PRODUCT + 1.2;
        bar(drawing, group, group.go, goX, GAUGE);
        double notGoX = goX + GAUGE + 1.2;
        if (group.notGo != null) {
            bar(drawing, group, group.notGo, notGoX, GAUGE);
            labels.addAll(labels(group, group.notGo, "NOT GO", notGoX + GAUGE));
        }
        labels.addAll(labels(group, group.go, "GO", goX + GAUGE));
        labels.addAll(labels(group, group.product, productName(), x + PRODUCT));
        write(drawing, labels, notGoX + GAUGE);
    }

    /** One end of a zone with its figure. */
    private record Label(String words, double y, double edge) {}

    private static void write(Drawing drawing, List<Label> labels, double right) {
        List<Double> wanted = labels.stream().map(Label::y).toList();
        List<Double> places = Stacked.apart(wanted, 4.6, TOP - 4, FOOT + 2);
        double text = right + 2.8;
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            drawing.path(
                    Outline.through(List.of(
                            Spot.at(label.edge + 0.3, label.y),
                            Spot.at(right + 0.6, label.y),
                            Spot.at(text - 0.8, places.get(i)))),
                    Line.THIN);
            drawing.text(Spot.at(text, places.get(i) + 1.25), label.words, NOTE);
        }
    }

    private List<Label> labels(Group group, Limits limits, String name, double edge) {
        List<Label> labels = new ArrayList<>();
        Length max = limits.max();
        Length min = limits.min();
        if (max != null) {
            labels.add(new Label(name + " " + figures.bare(max), y(group, max), edge));
        }
        if (min != null && !min.equals(max)) {
            labels.add(new Label(name + " " + figures.bare(min), y(group, min), edge));
        }
        return labels;
    }

    private String productName() {
        return side == Side.INTERNAL ? "hole" : "screw";
    }

    /** The product's zone is the wide one. */
    private void bar(Drawing drawing, Group group, Limits limits, double x, double width) {
        Length max = limits.max();
        Length min = limits.min();
        if (max == null || min == null) {
            Length end = max == null ? min : max;
            if (end != null) {
                drawing.line(Spot.at(x, y(group, end)), Spot.at(x + width, y(group, end)), Line.OUTLINE);
            }
            return;
        }
        double top = y(group, max);
        double foot = y(group, min);
        if (foot - top < 0.1) {
            drawing.line(Spot.at(x, top), Spot.at(x + width, top), Line.OUTLINE);
            return;
        }
        Outline bar = Outline.rectangle(Spot.at(x, top), width, foot - top);
        if (width == PRODUCT) {
            drawing.hatch(bar, 1.4).path(bar, Line.OUTLINE);
        } else {
            drawing.fill(bar, Fill.SOLID);
        }
    }

    private void key(Drawing drawing) {
        Outline product = Outline.rectangle(Spot.at(0, FOOT + 6), 6, 3.6);
        drawing.hatch(product, 1.4).path(product, Line.OUTLINE);
        drawing.text(Spot.at(7.5, FOOT + 9), productName(), NOTE);
        drawing.fill(Outline.rectangle(Spot.at(27, FOOT + 6), 6, 3.6), Fill.SOLID);
        drawing.text(Spot.at(34.5, FOOT + 9), "gauge; a line: no tolerance shown", NOTE);
    }
}
