// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import landfall.cards.answer.Lines;
import landfall.cards.answer.Unit;
import landfall.cards.words.Words;
import landfall.fault.Caution;
import landfall.quantity.UnitSystem;
import landfall.spread.Moments;
import landfall.spread.Proportion;
import landfall.spread.Sensitivity;
import landfall.spread.Summary;
import landfall.spread.Tally;

/**
 * A run as plain text of 80 columns. Figures have no more places than their sampling error leaves them, nor than their
 * unit is ever shown with.
 */
public final class SpreadText {
    private static final int BARS = 60;
    private static final String INK = " ▁▂▃▄▅▆▇█";
    private static final int MOST_ALONG = 25;

    private final SpreadSetup setup;
    private final Summary summary;
    private final UnitSystem units;
    private final List<String> lines = new ArrayList<>();

    private SpreadText(SpreadSetup setup, Summary summary) {
        this.setup = setup;
        this.summary = summary;
        this.units = setup.nominal().units();
    }

    public static String write(SpreadSetup setup, Summary summary) {
        SpreadText text = new SpreadText(setup, summary);
        text.head();
        for (int result = 0; result < setup.watched().size(); result++) {
            text.result(result);
        }
        text.foot();
        return String.join("\n", text.lines) + "\n";
    }

    private void head() {
        String title = Words.of(
                "spread.title", setup.wish().question(), setup.nominal().subject());
        lines.addAll(Lines.wrapped("", 0, title));
        lines.add("=".repeat(Math.min(80, lines.get(0).length())));
        String count = "%,d".formatted(summary.samples()).replace(',', ' ');
        lines.add(Words.of("spread.counted", count, Long.toString(setup.plan().seed())));
        lines.add("");
        lines.add(Words.of("spread.varies"));
        int wide = setup.varied().stream()
                .mapToInt(one -> one.path().length())
                .max()
                .orElse(0);
        for (Varied varied : setup.varied()) {
            String head = "  " + pad(varied.path(), wide) + "  ";
            lines.addAll(Lines.wrapped(head, head.length(), varied.typed()));
        }
    }

    private void result(int result) {
        Watched watched = setup.watched().get(result);
        Tally tally = summary.results().get(result);
        lines.add("");
        String sign = watched.unit() == Unit.PURE ? "" : ", " + watched.unit().sign(units);
        lines.add(watched.path() + sign);
        Moments moments = tally.moments();
        if (moments.count() == 0) {
            lines.add("  " + Words.of("spread.none"));
            return;
        }
        Places places = Places.of(moments, watched.unit(), units);
        if (moments.deviation() > 0) {
            histogram(tally, watched.unit());
        }
        line("spread.nominal", places.of(watched.nominal()));
        line("spread.mean", places.of(moments.mean()), places.finer(moments.deviation()));
        line("spread.nineTenths", places.of(tally.quantile(0.05)), places.of(tally.quantile(0.95)));
        line("spread.ends", places.of(moments.least()), places.of(moments.greatest()));
        if (watched.within().isSet()) {
            line("spread.within", watched.typed(), share(Proportion.of(tally.inside(), summary.samples())));
        }
        causes(watched);
        keeps(watched);
        along(watched, places);
    }

    private void line(String key, Object... values) {
        lines.addAll(Lines.wrapped("  ", 4, Words.of(key, values)));
    }

    private void histogram(Tally tally, Unit unit) {
        double low = tally.quantile(0.001);
        double width = (tally.quantile(0.999) - low) / BARS;
        if (!(width > 0)) {
            return;
        }
        long[] counts = new long[BARS];
        long most = 1;
        for (int i = 0; i < BARS; i++) {
            counts[i] = tally.between(low + i * width, low + (i + 1) * width);
            most = Math.max(most, counts[i]);
        }
        StringBuilder bars = new StringBuilder("  ");
        for (long count : counts) {
            bars.append(INK.charAt((int) Math.ceil((double) count / most * (INK.length() - 1))));
        }
        lines.add(bars.toString().stripTrailing());
        Places places = Places.of(tally.moments(), unit, units);
        String left = places.of(low);
        String right = places.of(low + BARS * width);
        lines.add("  " + left + " ".repeat(Math.max(1, BARS - left.length() - right.length())) + right);
    }

    private void causes(Watched watched) {
        List<SpreadCause> causes = SpreadCause.of(setup, summary).stream()
                .filter(cause -> cause.watched().equals(watched))
                .toList();
        if (causes.isEmpty()) {
            return;
        }
        lines.addAll(Lines.wrapped(
                "  ",
                4,
                Words.of(
                        "spread.movesMost",
                        causes.stream().map(SpreadText::cause).collect(Collectors.joining("; ")))));
    }

    private static String cause(SpreadCause cause) {
        Sensitivity found = cause.found();
        return "%s %.0f %% (± %.0f)%s"
                .formatted(
                        cause.varied().path(),
                        100 * found.total(),
                        Math.ceil(200 * found.totalError()),
                        found.total() - found.first() > 3 * (found.totalError() + found.firstError())
                                ? ", %.0f %% alone".formatted(100 * found.first())
                                : "");
    }

    private void keeps(Watched watched) {
        for (Keep keep : Keep.of(setup, summary)) {
            if (keep.watched().equals(watched) && !keep.varied().isChoice()) {
                String field = keep.varied().path();
                if (keep.isAll()) {
                    line("spread.keepAll", field);
                } else if (Double.isNaN(keep.from())) {
                    line("spread.keepNone", field);
                } else {
                    Unit unit = keep.varied().unit();
                    line(
                            "spread.keep",
                            field,
                            Places.whole(keep.from(), unit, units),
                            Places.whole(keep.to(), unit, units));
                }
            }
        }
    }

    /** Along what takes one of several values: they are what a person chooses between. */
    private void along(Watched watched, Places places) {
        for (int input = 0; input < setup.varied().size(); input++) {
            Varied varied = setup.varied().get(input);
            List<AlongPoint> points =
                    AlongPoint.of(watched, varied, summary.along(setup.watched().indexOf(watched), input));
            if (varied.isChoice() && points.size() <= MOST_ALONG) {
                lines.add("  " + Words.of("spread.along", varied.path()));
                int wide =
                        points.stream().mapToInt(at -> at.text().length()).max().orElse(0);
                for (AlongPoint at : points) {
                    String within = watched.within().isSet()
                            ? "   "
                                    + share(Proportion.of(
                                            at.inside(), at.moments().count()))
                            : "";
                    lines.add("    " + pad(at.text(), wide) + "   "
                            + places.of(at.moments().mean()) + " ± "
                            + places.of(2 * at.moments().deviation()) + within);
                }
            }
        }
    }

    private void foot() {
        if (setup.watched().size() > 1
                && setup.watched().stream().anyMatch(watched -> watched.within().isSet())) {
            lines.add("");
            lines.addAll(Lines.wrapped(
                    "", 2, Words.of("spread.good", share(Proportion.of(summary.good(), summary.samples())))));
        }
        if (!summary.refused().isEmpty()) {
            lines.add("");
            lines.add(Words.of("spread.refused"));
            summary.refused().forEach((why, count) -> lines.addAll(Lines.wrapped("  " + count + " × ", 6, why)));
        }
        List<Caution> cautions = SpreadDocument.of(setup, summary).cautions();
        if (!cautions.isEmpty()) {
            lines.add("");
            lines.add(Words.of("text.cautions"));
            cautions.forEach(caution -> lines.addAll(Lines.wrapped("  ! ", 4, caution.text())));
        }
    }

    private static String share(Proportion share) {
        double error = (share.high() - share.low()) / 2;
        int places = error > 0.002 ? 1 : error > 0.0002 ? 2 : 3;
        String format = "%." + places + "f %% (%." + places + "f to %." + places + "f %%)";
        return format.formatted(100 * share.share(), 100 * share.low(), 100 * share.high());
    }

    private static String pad(String text, int width) {
        return String.format(Locale.ROOT, "%-" + Math.max(1, width) + "s", text);
    }
}
