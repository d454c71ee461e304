// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import landfall.choice.OnHand;
import landfall.choice.Ranked;
import landfall.choice.TapAdvice;
import landfall.choice.TapRanking;
import landfall.choice.TapWish;
import landfall.fault.Answer;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.thread.ScrewThread;
import landfall.wear.Job;
import landfall.wear.Learned;
import landfall.wear.Survival;
import landfall.wear.WearLaw;
import landfall.working.Pen;
import landfall.working.Worked;

/** Chooses the tap of each line; one tap must last for all lines of its thread in one material. */
final class TapPicker {
    private final RouteWish wish;
    private final Map<Key, Job> jobs = new HashMap<>();
    private final Map<String, List<OnHand>> taps = new HashMap<>();

    private record Key(ScrewThread thread, String material) {}

    TapPicker(RouteWish wish) {
        this.wish = wish;
        Map<Key, Double> lengths = new HashMap<>();
        Map<Key, Integer> counts = new HashMap<>();
        for (HoleLine line : wish.holes()) {
            Key key = key(line);
            lengths.merge(key, line.count() * line.place().depth().mm(), Double::sum);
            counts.merge(key, line.count(), Integer::sum);
        }
        counts.forEach((key, count) ->
                jobs.put(key, new Job(count, Length.ofMm(lengths.getOrDefault(key, 0.0) / count))));
    }

    private static Key key(HoleLine line) {
        return new Key(line.callOut().thread(), line.material().id());
    }

    private Job job(HoleLine line) {
        Job job = jobs.get(key(line));
        if (job == null) {
            throw new IllegalStateException("no such line: " + line.line());
        }
        return job;
    }

    static TapWish tapWish(HoleLine line, RouteWish wish) {
        return new TapWish(
                line.callOut(),
                line.material(),
                new TapWish.Place(line.place().depth(), line.place().end()),
                new TapWish.Drive(wish.byHand(), null));
    }

    /** The kind that is advised, or why this thread has none. */
    Answer<Worked<TapAdvice>> advice(HoleLine line) {
        return TapAdvice.of(tapWish(line, wish));
    }

    TapPick pick(HoleLine line, TapAdvice advice, Pen pen) {
        Job job = job(line);
        List<OnHand> onRecord = taps.computeIfAbsent(
                line.material().id(), id -> wish.shop().taps().taps(line.material()));
        List<Ranked> ranked = TapRanking.rank(advice.wish(), job, onRecord);
        Ranked best = ranked.isEmpty() ? null : ranked.get(0);
        boolean dull = best != null && best.isOnlyDull();
        Ranked chosen = best != null && (best.isFit() || dull) ? best : null;
        OnHand.Wearing wearing = chosen == null ? null : chosen.tap().wearing();
        WearLaw law = wearing != null
                ? wearing.law()
                : wish.shop()
                        .taps()
                        .law(line.callOut().thread(), advice.choices().get(0).flutes(), line.material());
        Survival survival =
                written(wearing != null && !dull ? law.survival(wearing.run(), job) : law.survival(job), pen);
        return new TapPick(advice, ranked, chosen, dull, ahead(job, survival, law));
    }

    /** Lives are told in holes of the usual depth; a deeper hole is worth more of them. */
    private static TapPick.Ahead ahead(Job job, Survival survival, WearLaw law) {
        Learned learned = law.learned().value();
        Length depth = job.depth();
        Band life = depth == null
                ? learned.life()
                : learned.life().times(learned.depth().over(depth));
        return new TapPick.Ahead(job, survival, life);
    }

    /** The value of a computation, whose steps the pen notes. */
    static <T> T written(Worked<T> worked, Pen pen) {
        if (pen != Pen.NONE) {
            worked.steps().forEach(step -> pen.write(step.rule(), step.value()));
        }
        return worked.value();
    }
}
