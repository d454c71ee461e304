// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import landfall.choice.Ranked;
import landfall.drill.DrillSeries;
import landfall.fault.Answer;
import landfall.hole.HoleChoice;
import landfall.hole.HoleWish;
import landfall.quantity.Limits;
import landfall.working.Worked;

/** Gathers what is missing, one entry for lines that lack the same. */
final class Shortages {
    private static final double LIKELY = 0.5;
    private static final int TOLD = 4;

    private final Map<Key, List<Integer>> found = new LinkedHashMap<>();

    private record Key(Shortage.Kind kind, String says, String mend) {}

    private Shortages() {}

    static List<Shortage> of(List<Planned> holes) {
        Shortages shortages = new Shortages();
        for (Planned planned : holes) {
            shortages.drill(planned);
            shortages.tap(planned);
            shortages.gauge(planned);
        }
        List<Shortage> all = new ArrayList<>();
        shortages.found.forEach((key, lines) -> all.add(new Shortage(key.kind, lines, key.says, key.mend)));
        return List.copyOf(all);
    }

    private void lacks(Shortage.Kind kind, Planned planned, String says, String mend) {
        found.computeIfAbsent(new Key(kind, says, mend), any -> new ArrayList<>())
                .add(planned.line().line());
    }

    private void drill(Planned planned) {
        HoleChoice hole = planned.hole();
        if (hole.tools().drill().inside()) {
            return;
        }
        Limits minor = hole.minor();
        String size = hole.wish().callOut().normal();
        lacks(
                Shortage.Kind.DRILL,
                planned,
                "No drill in the drawers leaves a hole inside the limits of " + size + ", " + words(minor)
                        + "; the nearest is " + hole.tools().drill().drill().called(),
                better(hole) + ", or ream the hole to size");
    }

    /** The best of every drawer that there is. */
    private static String better(HoleChoice hole) {
        HoleWish wish = hole.wish();
        HoleWish.Tools tools = wish.tools();
        Answer<Worked<HoleChoice>> all = HoleChoice.of(wish.with(
                new HoleWish.Tools(DrillSeries.all(), tools.share(), tools.chamferThreads(), tools.flutes())));
        return all instanceof Answer.Of<Worked<HoleChoice>> of
                        && of.value().value().tools().drill().inside()
                ? "borrow or buy " + of.value().value().tools().drill().drill().called()
                : "no drill of the series does it";
    }

    private static String words(Limits limits) {
        String min = limits.min() == null ? "open" : limits.min().words();
        String max = limits.max() == null ? "open" : limits.max().words();
        return min + " to " + max;
    }

    private void tap(Planned planned) {
        TapPick tap = planned.tap();
        TapPick.Ahead ahead = tap.ahead();
        if (tap.chosen() == null) {
            lacks(
                    Shortage.Kind.TAP,
                    planned,
                    "No tap on record can do " + planned.line().callOut().normal() + whyNot(tap.ofTheThread()),
                    "buy or borrow one: "
                            + tap.kind() + ", "
                            + tap.advice().limit().words());
        }
        boolean sharp = tap.chosen() == null || tap.sharpenFirst();
        if (sharp && ahead.survival().due() > LIKELY) {
            int runs = (int)
                    Math.ceil(ahead.job().holes() / Math.max(1, ahead.life().expected()));
            lacks(
                    Shortage.Kind.LIFE,
                    planned,
                    String.format(
                            Locale.ROOT,
                            "A sharp tap lasts about %.0f of the %d holes of %s (%.0f to %.0f, eight in ten)",
                            ahead.life().expected(),
                            ahead.job().holes(),
                            planned.line().callOut().withoutClass().normal(),
                            ahead.life().low(),
                            ahead.life().high()),
                    "have " + Math.max(2, runs) + " sharp taps ready, or sharpen on the way");
        }
    }

    private static String whyNot(List<Ranked> taps) {
        if (taps.isEmpty()) {
            return ": none of this thread is there";
        }
        String told = taps.stream()
                .limit(TOLD)
                .map(one -> one.tap().mark() + ": "
                        + one.unfit().stream().map(unfit -> unfit.says()).collect(Collectors.joining(" ")))
                .collect(Collectors.joining(" "));
        return taps.size() > TOLD ? ". " + told + " And " + (taps.size() - TOLD) + " more." : ". " + told;
    }

    private void gauge(Planned planned) {
        for (GaugePick.Lack lack : planned.gauge().lack()) {
            lacks(
                    lack.isPastDue() ? Shortage.Kind.CALIBRATION : Shortage.Kind.GAUGE,
                    planned,
                    lack.says(),
                    lack.mend());
        }
    }
}
