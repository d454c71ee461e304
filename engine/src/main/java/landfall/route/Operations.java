// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import landfall.cost.Sittings;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.wear.Job;
import landfall.working.Pen;

/**
 * The operations in order: docs/methods/route-card.md. Tools are changed as seldom as can be, each drill and each tap
 * once. Of the orders that do so, the drills go from thin to thick, as a hole drilled too thin can be opened; and the
 * taps go by chance of breaking over time, the greatest first, which loses the least work on average.
 */
final class Operations {
    private static final double SECONDS = 60;

    private final List<Planned> holes;
    private final TapShelf shelf;
    private final Pen pen;
    private final List<Operation> all = new ArrayList<>();

    private Operations(List<Planned> holes, TapShelf shelf, Pen pen) {
        this.holes = holes;
        this.shelf = shelf;
        this.pen = pen;
    }

    static List<Operation> of(List<Planned> holes, TapShelf shelf, Pen pen) {
        Operations operations = new Operations(holes, shelf, pen);
        operations.sharpen();
        operations.gauges();
        operations.drills();
        operations.sink();
        operations.taps();
        return List.copyOf(operations.all);
    }

    private void sharpen() {
        Map<String, List<Planned>> dull =
                groups(planned -> planned.tap().sharpenFirst(), one -> one.tap().key());
        if (dull.isEmpty()) {
            return;
        }
        List<Sittings.DueTap> due = new ArrayList<>();
        List<String> untold = new ArrayList<>();
        dull.keySet().forEach(mark -> {
            Sittings.DueTap setUp = shelf.setUp(mark);
            if (setUp == null) {
                untold.add(mark);
            } else {
                due.add(setUp);
            }
        });
        List<Integer> lines = dull.values().stream()
                .flatMap(List::stream)
                .map(one -> one.line().line())
                .sorted()
                .toList();
        double minutes = sittings(due, untold.size());
        Band scatter = RouteRules.CUTTING.write(RouteRules.SCATTER, pen);
        BandRule rule = rule("k_s~*(t + t_s)", "sharpening");
        add(
                Operation.Kind.SHARPEN,
                String.join(", ", dull.keySet()),
                lines,
                new Timed(rule.write(scatter.times(minutes), pen), rule),
                "First, as a dull tap spoils the part; all that need it in one sitting for each cam.");
    }

    /** Gathered by cam, and each by itself whose card tells no cam. */
    private double sittings(List<Sittings.DueTap> due, int untold) {
        Sittings together = TapPicker.written(Sittings.of(due, Sittings.Times.USUAL), pen);
        double told = together.together().s() / SECONDS;
        double each =
                (Sittings.Times.USUAL.cam().s() + Sittings.Times.USUAL.each().s()) / SECONDS;
        double alone = pen.write(
                RouteRules.estimate(
                        "t_s",
                        "%d*(t_c + t_e)".formatted(untold),
                        "min",
                        "taps whose cards tell no cam, each with a set-up of its own"),
                untold * each);
        return told + alone;
    }

    private void gauges() {
        Set<String> names = new LinkedHashSet<>();
        for (Planned planned : holes) {
            GaugePick gauge = planned.gauge();
            if (gauge.go() != null) {
                names.add(gauge.go().name());
            }
            if (gauge.notGo() != null) {
                names.add(gauge.notGo().name());
            }
        }
        add(
                Operation.Kind.GAUGES,
                names.isEmpty() ? "none is here" : String.join(", ", names),
                holes.stream().map(one -> one.line().line()).toList(),
                timed(List.of(), "laying the gauges out"),
                "Before any metal is cut: a missing gauge, or one past its date, stops the job here and costs"
                        + " nothing.");
    }

    private void drills() {
        Map<String, List<Planned>> byDrill = groups(
                planned -> true,
                planned -> planned.hole().tools().drill().drill().called());
        List<List<Planned>> sorted = new ArrayList<>(byDrill.values());
        sorted.sort(Comparator.comparing((List<Planned> same) -> diameter(same.get(0)))
                .thenComparing(
                        same -> same.get(0).hole().tools().drill().drill().called()));
        for (List<Planned> same : sorted) {
            add(
                    Operation.Kind.DRILL,
                    same.get(0).hole().tools().drill().drill().called(),
                    lines(same),
                    timed(
                            same.stream()
                                    .map(one -> one.work().times().drilling())
                                    .toList(),
                            "drilling"),
                    "All holes of this drill in one go; thin drills first, as a hole too thin can still be opened.");
        }
    }

    private static Length diameter(Planned planned) {
        return planned.hole().tools().drill().drill().diameter();
    }

    private void sink() {
        add(
                Operation.Kind.COUNTERSINK,
                "90 or 120 deg",
                holes.stream().map(one -> one.line().line()).toList(),
                timed(holes.stream().map(one -> one.work().times().sinking()).toList(), "countersinking"),
                "After the drills and before the taps: the tap starts square in a mouth that is open.");
    }

    private void taps() {
        Map<String, List<Planned>> byTap =
                groups(planned -> true, planned -> planned.tap().key());
        List<Tapping> tappings = new ArrayList<>();
        byTap.forEach((key, same) -> tappings.add(tapping(key, same)));
        tappings.sort(
                Comparator.comparingDouble(Tapping::riskOverTime).reversed().thenComparing(Tapping::key));
        for (Tapping tapping : tappings) {
            double p = pen.write(RouteRules.risk(all.size() + 1), tapping.risk);
            Timed time = timed(tapping.parts(), "tapping and gauging");
            pen.write(
                    RouteRules.riskOverTime(all.size() + 1), p / time.minutes().expected());
            add(
                    Operation.Kind.TAP,
                    tapping.key,
                    lines(tapping.same),
                    time,
                    String.format(
                            Locale.ROOT,
                            "The chance to break is %.2f %%; over time the greatest goes first. The first thread is"
                                    + " gauged before the second is cut.",
                            100 * tapping.risk));
        }
    }

    /** One tap with all its lines. */
    private record Tapping(String key, List<Planned> same, double risk) {
        List<Timed> parts() {
            List<Timed> parts = new ArrayList<>();
            same.forEach(one -> {
                parts.add(one.work().times().tapping());
                parts.add(one.work().times().gauging());
            });
            return parts;
        }

        double riskOverTime() {
            double minutes = RouteRules.SET_UP_MIN.expected();
            for (Timed part : parts()) {
                minutes += part.minutes().expected();
            }
            return risk / minutes;
        }
    }

    /** Lines of one thread and material share a job, and its danger counts once. */
    private static Tapping tapping(String key, List<Planned> same) {
        Map<Job, Double> dangers = new LinkedHashMap<>();
        same.forEach(one -> dangers.merge(
                one.tap().ahead().job(), one.tap().ahead().survival().breaks(), Math::max));
        double whole = 1;
        for (double danger : dangers.values()) {
            whole *= 1 - danger;
        }
        return new Tapping(key, same, 1 - whole);
    }

    private Timed timed(List<Timed> parts, String means) {
        Band minutes = RouteRules.SET_UP.write(RouteRules.SET_UP_MIN, pen);
        StringBuilder formula = new StringBuilder("t_u~");
        for (Timed part : parts) {
            minutes = LinePlanner.plus(minutes, part.minutes());
            formula.append(" + ").append(part.symbol());
        }
        BandRule rule = rule(formula.toString(), means);
        return new Timed(rule.write(minutes, pen), rule);
    }

    private BandRule rule(String formula, String means) {
        int number = all.size() + 1;
        return RouteRules.band("t_o" + number + "~", formula, "min", "operation " + number + ", " + means);
    }

    private void add(Operation.Kind kind, String what, List<Integer> lines, Timed time, String why) {
        all.add(new Operation(kind, what, lines, time, why));
    }

    private static List<Integer> lines(List<Planned> same) {
        return same.stream().map(one -> one.line().line()).toList();
    }

    private Map<String, List<Planned>> groups(Predicate<Planned> which, Function<Planned, String> key) {
        Map<String, List<Planned>> groups = new LinkedHashMap<>();
        holes.stream()
                .filter(which)
                .forEach(one -> groups.computeIfAbsent(key.apply(one), any -> new ArrayList<>())
                        .add(one));
        return groups;
    }
}
