// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.ArrayList;
import java.util.List;
import landfall.envelope.GrindRun;
import landfall.fault.Caution;
import landfall.grind.GrindSetup;
import landfall.grind.Passes;
import landfall.grind.ProcedureStep;
import landfall.grind.ReliefAlong;
import landfall.grind.Setting;
import landfall.grind.Stock;
import landfall.grind.WheelCheck;
import landfall.grind.WheelMarking;
import landfall.quantity.Length;
import landfall.quantity.Turning;
import landfall.sheets.figure.Figures;
import landfall.sheets.paper.SheetContent.Fact;
import landfall.sheets.paper.SheetContent.Tick;
import landfall.sheets.paper.SheetContent.Work;

/** Puts a set-up into the words and figures of its sheet: second page, what to take and what to do. */
final class WorkWords {
    private final GrindSetup setup;
    private final GrindRun run;
    private final Figures figures;

    WorkWords(GrindSetup setup, GrindRun run, Figures figures) {
        this.setup = setup;
        this.run = run;
        this.figures = figures;
    }

    Work work() {
        return new Work(
                new SheetContent.Facts(taken(), behind()),
                steps(),
                cautions(),
                new AfterWords(setup, figures).after(),
                new RunWords(setup, run, figures).run());
    }

    private List<Fact> taken() {
        Stock stock = setup.work().stock();
        return List.of(
                new Fact("Stock", stockWords(stock)),
                new Fact("After", afterWords(stock.after())),
                new Fact("Wheel", wheelWords(setup.work().wheel())));
    }

    private List<Fact> behind() {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Relief", alongWords()));
        facts.add(new Fact("Ways", waysWords()));
        if (!setup.assumed().isEmpty()) {
            facts.add(new Fact("Assumed", sentences(setup.assumed())));
        }
        return facts;
    }

    private String stockWords(Stock stock) {
        return "To clean up: square %s, axial %s, radial %s. With %s allowance the whole axial move is %s."
                .formatted(
                        figures.length(stock.square()),
                        figures.length(stock.axial()),
                        figures.length(stock.radial()),
                        figures.length(stock.allowance()),
                        figures.length(stock.after().wholeAxial()));
    }

    private String afterWords(Stock.After after) {
        Length overall = after.overallIfEndFirst();
        String end = overall == null ? "" : " End ground first: overall length " + figures.length(overall) + ".";
        String better = after.endFirst() ? " Grinding the end first is the better way here." : "";
        return "Point %s, chamfer %s long if the end is left alone.%s%s"
                .formatted(
                        figures.diameter(after.pointDiameter()) + " " + figures.unit(),
                        figures.length(after.chamferLength()),
                        end,
                        better);
    }

    private String wheelWords(WheelCheck wheel) {
        var mounted = setup.fixture().wheel();
        StringBuilder words = new StringBuilder(figures.plainDiameter(mounted.diameter()));
        WheelMarking marking = wheel.marking();
        if (mounted.marking() != null) {
            words.append(", ").append(mounted.marking());
        }
        if (marking != null) {
            List<String> parts = marking.parts().stream()
                    .map(part -> part.mark() + " " + part.meaning())
                    .toList();
            words.append(" (").append(String.join("; ", parts)).append(')');
        }
        words.append('.');
        if (mounted.spindle() != null) {
            words.append(" Spindle " + turning(mounted.spindle()));
        }
        if (mounted.markedSpeed() != null) {
            words.append(", marked " + turning(mounted.markedSpeed()) + " at most");
        }
        if (wheel.surface() != null) {
            words.append(", at the rim ").append(figures.speed(wheel.surface()));
            words.append(" (").append(figures.other().speed(wheel.surface())).append(')');
        }
        return words.append('.').toString().replace("..", ".");
    }

    private static String turning(Turning turning) {
        return Figures.number(turning.revPerMin(), 0) + " rev/min";
    }

    private String alongWords() {
        List<String> parts = new ArrayList<>();
        for (ReliefAlong along : setup.shape().along()) {
            parts.add("%s %s working, %s static"
                    .formatted(along.at(), figures.fineAngle(along.working()), figures.fineAngle(along.ground())));
        }
        return String.join("; ", parts) + ".";
    }

    private String waysWords() {
        List<String> parts = new ArrayList<>();
        for (Setting.Option way : setup.motion().setting().ways()) {
            String reach = way.reached() ? "" : ", out of reach";
            parts.add("%s (%s, %s%s)"
                    .formatted(
                            way.way().words(),
                            figures.fineAngle(way.bySwivel()),
                            figures.fineAngle(way.byDivision()),
                            reach));
        }
        return String.join("; ", parts)
                + ". In brackets the relief that 0.25\u00b0 of swivel and one dial division are worth.";
    }

    private static String sentences(List<Caution> cautions) {
        return String.join(" ", cautions.stream().map(Caution::text).toList());
    }

    private List<Tick> steps() {
        List<Tick> ticks = new ArrayList<>();
        for (ProcedureStep step : setup.work().procedure()) {
            ticks.add(new Tick(step.text(), target(step), step.note(), passes(step)));
        }
        return ticks;
    }

    /** The passes of a step, by the step's name: rough, finish, spark-out. */
    private int passes(ProcedureStep step) {
        return setup.work().passes().stream()
                .filter(pass -> pass.kind().words().replace(' ', '-').equals(step.code()))
                .mapToInt(Passes.Pass::count)
                .sum();
    }

    private String target(ProcedureStep step) {
        if (step.angle() != null) {
            return figures.plainAngle(step.angle());
        }
        return step.length() == null ? "" : figures.length(step.length());
    }

    private SheetContent.Cautions cautions() {
        List<String> raised = new ArrayList<>();
        List<String> always = new ArrayList<>();
        for (Caution caution : setup.cautions()) {
            (caution.raisedBy().isEmpty() ? always : raised).add(caution.text());
        }
        return new SheetContent.Cautions(raised, always);
    }
}
