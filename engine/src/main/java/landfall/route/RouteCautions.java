// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import landfall.choice.Ranked;
import landfall.fault.Caution;

/** What must be said with a route; a caution of several lines is said once, with their numbers. */
final class RouteCautions {
    private final RouteWish wish;
    private final Map<Caution, TreeSet<Integer>> ofLines = new LinkedHashMap<>();

    private RouteCautions(RouteWish wish) {
        this.wish = wish;
    }

    static List<Caution> of(RouteWish wish, List<Planned> holes) {
        RouteCautions cautions = new RouteCautions(wish);
        holes.forEach(cautions::line);
        List<Caution> all = new ArrayList<>();
        all.add(new Caution(
                "estimatedTimes",
                "Times are common practice without a source and hold for one set-up of the part: the first job that"
                        + " you clock tells more.",
                "T"));
        cautions.assumed(all);
        cautions.ofLines.forEach((caution, lines) -> all.add(cautions.told(caution, lines, holes.size())));
        return List.copyOf(all);
    }

    private void assumed(List<Caution> all) {
        if (wish.drive() == null) {
            all.add(new Caution(
                    "driveAssumed",
                    "By hand or by machine was not told: a machine whose spindle is held to the feed is taken.",
                    "t_all"));
        }
        if (wish.shop().drills() == null) {
            all.add(new Caution(
                    "drawersAssumed",
                    "The shop's drawers were not told: number, letter and fraction drills for inch threads, metric"
                            + " ones for metric threads.",
                    ""));
        }
        if (wish.prices().hour() == null || wish.prices().tap() == null) {
            all.add(new Caution(
                    "pricesUntold",
                    "Cost is told as far as prices are: give an hour's cost and the price of a tap.",
                    ""));
        } else if (wish.prices().spoilt() == null) {
            all.add(new Caution(
                    "spoiltUntold",
                    "What a broken tap spoils was not told and counts as nothing: the cost of a hole is too low"
                            + " where the part is dear.",
                    "C"));
        }
        if (wish.prices().tap() != null && wish.prices().sharpenings() == null) {
            all.add(new Caution(
                    "sharpeningsAssumed",
                    "How often a tap can be sharpened was not told: five times (common practice).",
                    "C"));
        }
    }

    private void line(Planned planned) {
        int line = planned.line().line();
        planned.hole().cautions().forEach(caution -> add(caution, line));
        planned.tap().advice().cautions().stream()
                .filter(caution ->
                        !caution.code().endsWith("Assumed") && !caution.code().startsWith("blank"))
                .forEach(caution -> add(caution, line));
        Ranked chosen = planned.tap().chosen();
        if (chosen != null) {
            chosen.words()
                    .cautions()
                    .forEach(text -> add(new Caution("tap", chosen.tap().mark() + ": " + text, ""), line));
        }
        planned.gauge().cautions().forEach(text -> add(new Caution("gauge", text, ""), line));
    }

    private void add(Caution caution, int line) {
        ofLines.computeIfAbsent(caution, any -> new TreeSet<>()).add(line);
    }

    private Caution told(Caution caution, TreeSet<Integer> lines, int all) {
        if (lines.size() == all) {
            return caution;
        }
        String numbers = lines.stream().map(String::valueOf).collect(Collectors.joining(", "));
        return new Caution(caution.code(), "Line " + numbers + ": " + caution.text(), caution.raisedBy());
    }
}
