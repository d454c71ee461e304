// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import landfall.choice.TapAdvice;
import landfall.cost.Bench;
import landfall.cost.HoleCost;
import landfall.cost.Sittings;
import landfall.cut.CutWish;
import landfall.cut.CutWish.Opening;
import landfall.cut.Driven;
import landfall.cut.Tempo;
import landfall.fault.Answer;
import landfall.hole.HoleChoice;
import landfall.hole.HoleWish;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.Money;
import landfall.tap.TapMaterial;
import landfall.thread.ScrewThread;
import landfall.wear.WearLaw;
import landfall.working.Pen;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** Plans one line after the other. */
final class LinePlanner {
    private static final int USUAL_SHARPENINGS = 5;
    private static final double SECONDS = 60;

    private final RouteWish wish;
    private final TapPicker picker;

    LinePlanner(RouteWish wish) {
        this.wish = wish;
        this.picker = new TapPicker(wish);
    }

    /** Whether the line can be planned at all, with every reason why not. */
    Answer<Planned> plan(HoleLine line) {
        return picker.advice(line)
                .then(advice -> hole(line, picker.pick(line, advice.value(), Pen.NONE))
                        .map(hole -> plan(line, advice, Pen.NONE)));
    }

    /** The same of a line that can be, with its steps. */
    Planned plan(HoleLine line, Pen pen) {
        return plan(line, picker.advice(line).orThrow(), pen);
    }

    private Planned plan(HoleLine line, Worked<TapAdvice> worked, Pen pen) {
        TapAdvice advice = TapPicker.written(worked, pen);
        TapPick tap = picker.pick(line, advice, pen);
        HoleChoice hole = TapPicker.written(hole(line, tap).orThrow(), pen);
        GaugePick gauge = GaugePick.of(line.callOut(), wish.shop().gauges(), wish.today());
        return new Planned(line, hole, tap, gauge, work(line, hole, tap, pen));
    }

    private Answer<Worked<HoleChoice>> hole(HoleLine line, TapPick tap) {
        return HoleChoice.of(new HoleWish(
                line.callOut(),
                line.material(),
                new HoleWish.Place(line.place().depth(), line.place().end(), null),
                new HoleWish.Tools(wish.shop().drills(), null, tap.chamferThreads(), tap.flutes()),
                HoleWish.Strengths.EQUAL,
                null));
    }

    private Planned.Work work(HoleLine line, HoleChoice hole, TapPick tap, Pen pen) {
        ScrewThread thread = line.callOut().thread();
        Length drill = hole.tools().drill().drill().diameter();
        double threads = hole.depth() == null ? 0 : hole.depth().chamferThreads();
        pen.write(RouteRules.MAJOR, thread.major().mm());
        pen.write(RouteRules.PITCH, thread.pitch().mm());
        pen.write(RouteRules.LEAD, thread.lead().perTurn().mm());
        pen.write(RouteRules.DEPTH, line.place().depth().mm());
        pen.write(RouteRules.CHAMFER, threads);
        Tempo.Known known = new Tempo.Known(tap.flutes(), threads, TapMaterial.HSS);
        CutWish cut = new CutWish(line.material(), drill, line.place().depth(), null, how(line));
        Tempo tempo = Tempo.of(thread, known, cut, pen);
        Planned.Times times = new Planned.Times(
                drilling(line, hole, pen),
                holes(line, "t_c", "t_k~", RouteRules.SINK.write(RouteRules.SINK_MIN, pen), pen),
                tapping(line, tempo.time(thread, known, cut, pen).s(), pen),
                gauging(line, pen));
        return new Planned.Work(tempo, times, taps(line, tap, pen));
    }

    private CutWish.How how(HoleLine line) {
        return new CutWish.How(
                null,
                line.through() ? Opening.THROUGH : Opening.BLIND,
                wish.drive() == null ? Driven.UNTOLD : Driven.by(wish.drive()),
                CutWish.How.USUAL.holding(),
                CutWish.How.USUAL.evenness());
    }

    /** Speeds of the list, the drill's diameter and its deepest point have been written. */
    private static Timed drilling(HoleLine line, HoleChoice hole, Pen pen) {
        double d_w = pen.write(
                RouteRules.DRILL, hole.tools().drill().drill().diameter().mm());
        double k_d = pen.write(RouteRules.DRILL_SPEED, RouteRules.DRILL_OVER_TAP);
        var speed = line.material().cutting().speed().value();
        double v = (speed.least().mPerMin() + speed.greatest().mPerMin()) / 2;
        double n_d = pen.write(RouteRules.DRILL_TURNS, 1000 * k_d * v / (Math.PI * d_w));
        double f_d = pen.write(RouteRules.DRILL_FEED, RouteRules.FEED_OVER_DRILL * d_w);
        double deep = hole.depth() == null ? 0 : hole.depth().drillPoint().mm();
        double t_h = pen.write(RouteRules.DRILL_TIME, (deep + 3) / (n_d * f_d));
        Band scatter = RouteRules.CUTTING.write(RouteRules.SCATTER, pen);
        return holes(line, "t_d", "k_s~*t_h", scatter.times(t_h), pen);
    }

    private static Timed tapping(HoleLine line, double seconds, Pen pen) {
        Band each = RouteRules.SCATTER.times(seconds / SECONDS);
        return holes(line, "t_t", "k_s~*t_all/60", each, pen);
    }

    private static Timed holes(HoleLine line, String symbol, String formula, Band each, Pen pen) {
        double m = pen.write(RouteRules.count(line.line()), line.count());
        Band place = RouteRules.PLACE.write(RouteRules.PLACE_MIN, pen);
        BandRule rule = RouteRules.holes(symbol, line.line(), formula, words(symbol) + " line ");
        return new Timed(rule.write(plus(place, each).times(m), pen), rule);
    }

    private static String words(String symbol) {
        return symbol.equals("t_d") ? "drilling" : symbol.equals("t_c") ? "countersinking" : "tapping";
    }

    private static Timed gauging(HoleLine line, Pen pen) {
        double n_g =
                pen.write(RouteRules.gauged(line.line()), 1 + Math.floor((line.count() - 1) / RouteRules.GAUGED_EVERY));
        Band one = RouteRules.GAUGE.write(RouteRules.GAUGE_MIN, pen);
        BandRule rule = RouteRules.gauging(line.line());
        return new Timed(rule.write(one.times(n_g), pen), rule);
    }

    static Band plus(Band one, Band other) {
        return new Band(one.low() + other.low(), one.expected() + other.expected(), one.high() + other.high());
    }

    /** Null without a price of the tap; what a broken one spoils counts as nothing where it was not told. */
    private Planned.@Nullable Taps taps(HoleLine line, TapPick tap, Pen pen) {
        Money price = wish.prices().tap();
        Money hour = wish.prices().hour();
        if (price == null || hour == null) {
            return null;
        }
        Money spoilt = wish.prices().spoilt();
        double minutes = Sittings.Times.USUAL.each().s() / SECONDS;
        Bench bench = new Bench(
                price,
                new Money(hour.amount() * minutes / SECONDS, hour.currency()),
                spoilt != null ? spoilt : new Money(0, price.currency()));
        Integer told = wish.prices().sharpenings();
        WearLaw law = wish.shop().taps().law(line.callOut().thread(), tap.flutes(), line.material());
        HoleCost cost = TapPicker.written(HoleCost.of(law, bench, told == null ? USUAL_SHARPENINGS : told), pen);
        double m = pen.write(RouteRules.count(line.line()), line.count());
        BandRule rule = RouteRules.band(
                "K" + line.line() + "~",
                "m" + line.line() + "*C~",
                cost.rules().expected().unit(),
                "taps for line " + line.line());
        return new Planned.Taps(cost, rule.write(cost.perHole().times(m), pen), rule);
    }
}
