// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import static landfall.sheets.paper.SheetParts.text;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import landfall.cards.job.JobState;
import landfall.cards.job.LineWords;
import landfall.fault.Caution;
import landfall.route.Operation;
import landfall.route.Planned;
import landfall.route.Route;
import landfall.route.Shortage;
import landfall.route.Totals;
import org.jspecify.annotations.Nullable;

/** Lays a route card out as XHTML. */
final class RoutePage {
    private static final double CODE_MM = 25;
    private static final String AT_THE_WHEEL =
            "At the wheel: hood and flanges in place, ring test before mounting, never over the marked speed; eye"
                    + " and face protection, no gloves or loose sleeves, dust extraction; one full turn of the cam by"
                    + " hand with the wheel stopped and withdrawn.";
    private static final int MOST_BOXES = 6;
    private static final String STYLE = """
            .route { table-layout: fixed; }
            .route th, .route td { border-bottom: 0.1mm solid #000; padding: 0.6mm 1.5mm 0.6mm 0; }
            .route th { border-bottom: 0.4mm solid #000; font-size: 8.5pt; padding: 0.3mm 1.5mm 0.3mm 0; }
            .route tr { page-break-inside: avoid; }
            .route .tick { width: 6mm; }
            .route .count { width: 6mm; }
            .route .what { width: 52mm; }
            .route .lines { width: 16mm; }
            .route .time { width: 30mm; }
            .holes .line { width: 12mm; }
            .holes .many { width: 10mm; }
            .holes .callout { width: 33mm; }
            .holes .deep { width: 22mm; }
            .holes .drill { width: 24mm; }
            .holes .tapped { width: 26mm; }
            .holes .speed { width: 20mm; }
            .holes .gauge { width: 22mm; }
            """;

    private final JobState job;
    private final Route route;
    private final String address;
    private final StringBuilder page = new StringBuilder();
    private final SheetParts parts = new SheetParts(page);

    RoutePage(RouteSheet.Content content) {
        this.job = content.job();
        this.route = content.route();
        this.address = content.address();
    }

    String write(SheetOrder order) {
        page.append(SheetParts.head(job.number() + " route card", order.paper(), order.foot())
                .replace("</style>", STYLE + "</style>"));
        head();
        shortages();
        operations();
        holes();
        parts.cautions(cautions());
        page.append("</body>\n</html>\n");
        return page.toString();
    }

    private void head() {
        page.append("<table class=\"head\"><tr><td><h1>")
                .append(text(job.number()))
                .append("</h1><p><b>")
                .append(text(job.card().name()))
                .append("</b></p><p>Route card. Holes: ")
                .append(job.holes())
                .append(". Time: ")
                .append(text(LineWords.minutes(route.totals().time().minutes())))
                .append(", an estimate.</p>");
        cost("Work", route.totals().work());
        cost("Taps", route.totals().taps());
        cost("All told", route.totals().all());
        page.append("<p>part ________ order ________ date ________ by ________</p></td><td class=\"right\">")
                .append(SquareCode.svg("code", address, CODE_MM))
                .append("</td></tr></table>\n");
    }

    private void cost(String name, Totals.@Nullable Cost cost) {
        if (cost != null) {
            page.append("<p>").append(text(name + ": " + LineWords.money(cost))).append(".</p>");
        }
    }

    private void shortages() {
        if (route.shortages().isEmpty()) {
            page.append("<p class=\"said\"><b>Nothing is short.</b></p>\n");
            return;
        }
        page.append("<h2>Short: see to it first</h2>\n<table class=\"steps\">\n<colgroup><col class=\"tick\"/>")
                .append("<col/></colgroup>\n");
        for (Shortage shortage : route.shortages()) {
            page.append("<tr><td class=\"tick\"><span class=\"box\"></span></td><td><b>Line ")
                    .append(numbers(shortage.lines()))
                    .append(".</b> ")
                    .append(text(shortage.says()))
                    .append(". <b>")
                    .append(text(capital(shortage.mend())))
                    .append(".</b></td></tr>\n");
        }
        page.append("</table>\n");
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String numbers(List<Integer> lines) {
        return lines.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private void operations() {
        page.append("<h2>Operations, in order</h2>\n<table class=\"route\">\n<colgroup><col class=\"tick\"/>")
                .append("<col class=\"count\"/><col class=\"what\"/><col class=\"lines\"/><col class=\"time\"/><col/>")
                .append("</colgroup>\n<tr><th></th><th></th><th>do</th><th>lines</th><th>minutes</th><th>why here</th>")
                .append("</tr>\n");
        int number = 0;
        String before = "";
        for (Operation one : route.operations()) {
            number++;
            String why = one.why().equals(before) ? "as before" : one.why();
            before = one.why();
            page.append("<tr><td><span class=\"box\"></span></td><td><b>")
                    .append(number)
                    .append("</b></td><td>")
                    .append(text(kind(one.kind())))
                    .append(" <b>")
                    .append(text(one.what()))
                    .append("</b></td><td>")
                    .append(numbers(one.lines()))
                    .append("</td><td>")
                    .append(text(LineWords.minutes(one.time().minutes())))
                    .append("</td><td class=\"small\">")
                    .append(text(why))
                    .append("</td></tr>\n");
        }
        page.append("</table>\n");
    }

    private static String kind(Operation.Kind kind) {
        return switch (kind) {
            case SHARPEN -> "Sharpen";
            case GAUGES -> "Lay out the gauges:";
            case DRILL -> "Drill";
            case COUNTERSINK -> "Countersink";
            case TAP -> "Tap and gauge:";
        };
    }

    private void holes() {
        page.append("<h2>Holes</h2>\n<table class=\"route holes\">\n<colgroup>")
                .append("<col class=\"line\"/><col class=\"many\"/>")
                .append("<col class=\"callout\"/><col class=\"deep\"/><col class=\"drill\"/><col class=\"tapped\"/>")
                .append("<col class=\"speed\"/><col class=\"gauge\"/><col class=\"boxes\"/></colgroup>\n")
                .append("<tr><th>line</th>")
                .append("<th>holes</th><th>call-out, material</th><th>thread</th><th>drill, to</th><th>tap</th>")
                .append("<th>speed</th><th>gauge</th><th>done</th></tr>\n");
        for (Planned planned : route.holes()) {
            hole(planned, LineWords.of(planned));
        }
        page.append("</table>\n");
    }

    private void hole(Planned planned, LineWords words) {
        List<String> cells = List.of(
                words.number(),
                String.valueOf(planned.line().count()),
                words.callOut() + ", " + planned.line().material().id(),
                words.depth(),
                words.drill() + ", " + words.drillDepth(),
                words.tap(),
                words.speed(),
                words.gauge());
        page.append("<tr>");
        for (int i = 0; i < cells.size(); i++) {
            boolean strong = i == 0 || i == 2 || i == 4 || i == 5;
            page.append(strong ? "<td><b>" : "<td>").append(text(cells.get(i))).append(strong ? "</b></td>" : "</td>");
        }
        int count = planned.line().count();
        page.append("<td>")
                .append(count <= MOST_BOXES ? "<span class=\"box\"></span>".repeat(count) : "____ of " + count)
                .append("</td></tr>\n");
        if (!planned.line().named().note().isEmpty()) {
            page.append("<tr><td></td><td colspan=\"8\">")
                    .append(text(planned.line().named().note()))
                    .append("</td></tr>\n");
        }
    }

    /** What these figures raise, and what the work always asks for. */
    private SheetContent.Cautions cautions() {
        List<String> raised = new ArrayList<>();
        Set<String> always = new LinkedHashSet<>();
        for (Caution caution : route.cautions()) {
            boolean ofTheJob = !caution.raisedBy().isEmpty() || caution.text().startsWith("Line ");
            if (ofTheJob) {
                raised.add(caution.text());
            } else {
                always.add(caution.text());
            }
        }
        if (always.stream().noneMatch(said -> said.contains("roken tap"))) {
            always.add(TappingSteps.SHARDS);
        }
        always.addAll(TappingSteps.ALWAYS);
        if (route.operations().stream().anyMatch(one -> one.kind() == Operation.Kind.SHARPEN)) {
            always.add(AT_THE_WHEEL);
        }
        return new SheetContent.Cautions(raised, List.copyOf(always));
    }
}
