// SPDX-License-Identifier: Apache-2.0
package landfall.app.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import landfall.app.shell.Typed;
import landfall.cards.card.TapCard;
import landfall.cards.job.JobState;
import landfall.cards.job.LineWords;
import landfall.cards.words.Words;
import landfall.choice.Ranked;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.route.Planned;
import landfall.route.Route;
import landfall.route.Shortage;
import org.jspecify.annotations.Nullable;

/**
 * A route as a page shows it.
 *
 * @param cards of the taps that are chosen, by their marks
 */
public record RouteView(JobState job, Route route, Map<String, Map<String, String>> cards) {
    public RouteView {
        cards = Map.copyOf(cards);
    }

    /** One operation in words. */
    public record Step(String kind, String what, String lines, String minutes, String why) {}

    /** One line of the drawing, with where its questions can be asked in full. */
    public record Hole(LineWords words, Planned planned, Links links, long done) {
        public int line() {
            return planned.line().line();
        }

        public int count() {
            return planned.line().count();
        }

        public String material() {
            return planned.line().material().id();
        }

        /** Taps of the thread that were passed over, each with why. */
        public List<String> passedOver() {
            return planned.tap().ofTheThread().stream()
                    .filter(one -> !one.tap().mark().equals(words.mark()))
                    .map(Hole::said)
                    .toList();
        }

        private static String said(Ranked one) {
            String why = one.isFit()
                    ? String.join(" ", one.words().cautions())
                    : one.unfit().stream().map(unfit -> unfit.says()).collect(Collectors.joining(" "));
            return one.tap().mark() + ": " + (why.isEmpty() ? "fit." : why);
        }
    }

    /** Addresses with the subject filled in; empty where there is none. */
    public record Links(String hole, String cut, String grind, String tap) {}

    /** Where links open: beside a page whose cells are typed and not kept, so that going back loses none of them. */
    public @Nullable String target() {
        return job.number().isEmpty() ? "_blank" : null;
    }

    public List<String> shortages() {
        return route.shortages().stream().map(RouteView::said).toList();
    }

    private static String said(Shortage shortage) {
        String lines = shortage.lines().stream().map(String::valueOf).collect(Collectors.joining(", "));
        return Words.of("job.shortLine", lines, shortage.says(), shortage.mend());
    }

    public List<Step> steps() {
        return route.operations().stream()
                .map(one -> new Step(
                        one.kind().code(),
                        one.what(),
                        one.lines().stream().map(String::valueOf).collect(Collectors.joining(", ")),
                        LineWords.minutes(one.time().minutes()),
                        one.why()))
                .toList();
    }

    public List<Hole> holes() {
        return route.holes().stream()
                .map(planned -> {
                    LineWords words = LineWords.of(planned);
                    return new Hole(
                            words,
                            planned,
                            links(planned, words.mark()),
                            job.done(planned.line().line()));
                })
                .toList();
    }

    private Links links(Planned planned, String mark) {
        Map<String, String> hole = new LinkedHashMap<>();
        hole.put("thread", planned.line().callOut().normal());
        hole.put("material", planned.line().material().id());
        hole.put("depth", length(planned, planned.line().place().depth()));
        hole.put("end", planned.line().place().end().code());
        Map<String, String> card = new LinkedHashMap<>();
        cards.getOrDefault(mark, Map.of()).forEach((path, text) -> {
            if (TapCard.FORM.field(path).isPresent() && !path.equals("mark")) {
                card.put(path, text);
            }
        });
        Map<String, String> cut = new LinkedHashMap<>(card);
        cut.putIfAbsent("thread", planned.line().callOut().normal());
        cut.put("cuts", planned.line().material().id());
        cut.put("hole", length(planned, planned.hole().tools().drill().drill().diameter()));
        cut.put("depth", length(planned, planned.line().place().depth()));
        cut.put("end", planned.line().place().end().code());
        return new Links(
                Typed.address("/hole", hole),
                Typed.address("/cut", cut),
                planned.tap().sharpenFirst() ? Typed.address("/grind", card) : "",
                mark.isEmpty() ? "" : "/crib/" + mark);
    }

    private static String length(Planned planned, Length length) {
        return planned.line().callOut().thread().family().system() == UnitSystem.INCH
                ? String.format(Locale.ROOT, "%.4f in", length.inch())
                : String.format(Locale.ROOT, "%.3f mm", length.mm());
    }

    public String time() {
        return LineWords.minutes(route.totals().time().minutes());
    }

    public String work() {
        return LineWords.money(route.totals().work());
    }

    public String taps() {
        return LineWords.money(route.totals().taps());
    }

    public String all() {
        return LineWords.money(route.totals().all());
    }

    public List<Caution> cautions() {
        return route.cautions();
    }
}
