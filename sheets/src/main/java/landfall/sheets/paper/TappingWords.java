// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.ArrayList;
import java.util.List;
import landfall.cut.CutForecast;
import landfall.cut.CutWish.Opening;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.Speed;
import landfall.quantity.Torque;
import landfall.sheets.cut.CutSketches;
import landfall.sheets.cut.Tapping;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Mark;
import landfall.sheets.figure.Figures;
import landfall.sheets.paper.SheetContent.Fact;
import landfall.sheets.paper.SheetContent.Heading;
import landfall.sheets.paper.SheetContent.Key;
import landfall.sheets.paper.SheetContent.Keys;
import landfall.sheets.paper.SheetContent.Verdict;
import landfall.tap.Tap;
import landfall.working.Step;

/** Puts a tapping job into the words and figures of its sheet. {@link TappingSteps} does what is done in order. */
final class TappingWords {
    private final Tapping tapping;
    private final Tap tap;
    private final CutForecast cut;
    private final List<Step> working;
    private final Figures figures;

    TappingWords(Tapping tapping, List<Step> working, SheetOrder order) {
        this.tapping = tapping;
        this.tap = tapping.tap();
        this.cut = tapping.cut();
        this.working = List.copyOf(working);
        this.figures = new Figures(order.units());
    }

    TappingContent content() {
        CutSketches sketches = new CutSketches(tapping, figures, "sketch");
        TappingSteps steps = new TappingSteps(tapping, figures);
        return new TappingContent(
                heading(),
                new Keys(keys(), verdict()),
                new TappingContent.Pictures(
                        sketches.hole(Ink.PAPER),
                        sketches.torque(Ink.PAPER),
                        sketches.slices(Ink.PAPER),
                        sketches.section(Ink.PAPER)),
                facts(),
                new TappingContent.Work(steps.steps(), steps.cautions()),
                new ShortWorking(working).lines());
    }

    private Heading heading() {
        String words = "%d flutes, %s, %s hand. Chamfer %s, %s threads, point %s. %s hole, full thread %s."
                .formatted(
                        tap.flutes().count(),
                        tap.flutes().kind().code().replace('-', ' '),
                        tap.thread().hand().word(),
                        figures.plainAngle(tap.chamfer().angle()),
                        Figures.number(tap.chamfer().threads(), 1),
                        figures.diameter(tap.chamfer().pointDiameter()) + " " + figures.unit(),
                        opening(),
                        figures.coarse(cut.wish().depth()));
        return new Heading(tap.callOut().normal(), words, cut.wish().material().id() + ", " + hardness());
    }

    private String hardness() {
        return cut.wish().material().naming().hardness();
    }

    private String opening() {
        Opening opening = cut.wish().how().opening();
        return opening == null ? "Blind (not told)" : opening == Opening.BLIND ? "Blind" : "Through";
    }

    private List<Key> keys() {
        Band torque = cut.load().torque().full();
        return List.of(
                drill(),
                new Key(
                        "Spindle",
                        Figures.number(cut.pace().spindle().revPerMin(), 0) + " rev/min",
                        List.of(speed(figures), speed(figures.other()))),
                new Key(
                        "Feed each turn",
                        figures.length(tap.thread().lead().perTurn()),
                        List.of(figures.other().length(tap.thread().lead().perTurn()))),
                new Key(
                        "Torque, full cut",
                        words(torque) + " N\u00b7m",
                        List.of(inchPounds(torque) + " in\u00b7lb", "breaks at " + words(breaking()) + " N\u00b7m")),
                new Key(
                        "Margin",
                        words(cut.load().margin()),
                        List.of("expected "
                                + Figures.significant(cut.load().margin().expected(), 2))));
    }

    private Key drill() {
        Length hole = cut.wish().hole();
        List<String> under = new ArrayList<>(List.of(figures.other().length(hole)));
        if (!tapping.isOfDrill() || tapping.hole() == null) {
            return new Key("Hole", figures.length(hole), under);
        }
        String name = tapping.hole().tools().drill().drill().called();
        under.add(0, figures.diameter(hole) + " " + figures.unit());
        return new Key("Drill", name, under);
    }

    private Band breaking() {
        return cut.load().strength().breaking();
    }

    private String speed(Figures in) {
        Speed speed = Speed.ofMPerMin(cut.pace().speed().expected());
        return in.isInch()
                ? Figures.number(speed.ftPerMin(), 0) + " ft/min"
                : Figures.number(speed.mPerMin(), 1) + " m/min";
    }

    static String words(Band band) {
        return Figures.significant(band.low(), 2) + " to " + Figures.significant(band.high(), 2);
    }

    private static String inchPounds(Band band) {
        return Figures.significant(Torque.ofNm(band.low()).inchPound(), 2) + " to "
                + Figures.significant(Torque.ofNm(band.high()).inchPound(), 2);
    }

    /** By the bands: they stay apart, they overlap, or the expected figures themselves are the wrong way round. */
    private Verdict verdict() {
        String part = cut.load().strength().governing().part().words();
        Band margin = cut.load().margin();
        if (margin.low() >= 1) {
            return new Verdict(
                    Mark.GO, "IT HOLDS.", "Even the upper torque stays under what the " + part + " bears at least.");
        }
        return margin.expected() >= 1
                ? new Verdict(
                        Mark.CAUTION,
                        "NOT SAFE.",
                        "The upper torque is over what the " + part
                                + " bears at least: try one where it can be spared.")
                : new Verdict(
                        Mark.NOT_GO,
                        "THE TAP MAY WELL BREAK.",
                        "The torque to expect is over what the " + part + " can bear.");
    }

    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        var load = cut.chips().load();
        facts.add(new Fact(
                "Chip",
                "%d teeth in the cut, %s thick. %s"
                        .formatted(
                                load.slices().size(),
                                figures.length(load.steps().thickness()),
                                clearing())));
        facts.add(new Fact(
                "Torque",
                "Back: %s N\u00b7m. Thrust of the chamfer: %s N."
                        .formatted(
                                words(cut.load().torque().reversal()),
                                words(cut.load().torque().thrust()))));
        facts.add(new Fact("Fluid", cut.fluid() + "."));
        facts.add(new Fact(
                "Time",
                "%s s in and out; power %s W."
                        .formatted(
                                Figures.number(cut.pace().time().s(), 1),
                                words(cut.pace().power()))));
        facts.add(new Fact("Turned", new TappingSteps(tapping, figures).driven()));
        if (tapping.hole() != null) {
            tapping.hole()
                    .strength()
                    .ifPresent(strength -> facts.add(new Fact(
                            "Holds",
                            "From an engagement of " + figures.coarse(strength.engagement())
                                    + " on the screw breaks first, equal materials.")));
        }
        return facts;
    }

    private String clearing() {
        Band depth = cut.chips().room().clearAfter();
        return "Flutes are full after %s to %s."
                .formatted(figures.coarseBare(Length.ofMm(depth.low())), figures.coarse(Length.ofMm(depth.high())));
    }
}
