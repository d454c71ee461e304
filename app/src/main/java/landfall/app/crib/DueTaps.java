// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import landfall.cards.crib.ShopLaws;
import landfall.cards.crib.TapOnRecord;
import landfall.history.Mark;
import landfall.store.Store;
import landfall.store.crib.RunRecords;
import landfall.wear.WearLaw;
import org.jspecify.annotations.Nullable;

/**
 * When taps of the crib are due, by the wear laws that all taps of their threads have taught. A law is worked out once
 * and again when its runs have changed.
 */
public final class DueTaps {
    /** Taps in use up to which all are weighed and told, those that are due long hence too. */
    public static final int MOST = 500;

    private static final int LAWS_KEPT = 1000;

    private final RunRecords runs;
    private final Map<ShopLaws.Key, Law> laws = new LinkedHashMap<>(16, 0.75F, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<ShopLaws.Key, Law> eldest) {
            return size() > LAWS_KEPT;
        }
    };

    private record Law(RunRecords.Stamp stamp, WearLaw law) {}

    public DueTaps(Store store) {
        this.runs = new RunRecords(store);
    }

    /** One tap; empty where it is no tap, has ended, or nobody told what it cuts. */
    public Optional<ShopLaws.Found> of(Mark mark) {
        return runs.tap(mark)
                .flatMap(tap -> Optional.ofNullable(ShopLaws.of(asked()).find(tap)));
    }

    /**
     * Taps in use whose material is known: up to {@link #MOST} of them all; of more, those that are due or may be. The
     * first due at the head.
     */
    public Soonest soonest() {
        Weighing weighing = new Weighing(null, MOST);
        return weighing.inUse > MOST
                ? new Soonest(weighing.due(), weighing.left(), weighing.inUse - weighing.worn.size())
                : new Soonest(weighing.all(), 0, 0);
    }

    /**
     * Those that are due or may be, the first due at the head.
     *
     * @param size call-out without class; null for all
     * @param most of so many, the most worn, each is weighed
     */
    public Soonest due(@Nullable String size, int most) {
        Weighing weighing = new Weighing(size, most);
        return new Soonest(weighing.due(), weighing.left(), weighing.inUse - weighing.worn.size());
    }

    /**
     * @param unweighed taps that are less worn than those told and may be due too
     * @param later taps that are due long hence and not among those told
     */
    public record Soonest(List<ShopLaws.Found> taps, int unweighed, int later) {
        public Soonest {
            taps = List.copyOf(taps);
        }
    }

    /** A run with how much of its life is used. */
    private record Worn(RunRecords.OpenRun run, double share) {}

    /** All open runs looked over, and the most worn of them weighed. */
    private final class Weighing {
        private final ShopLaws shop;
        private final List<RunRecords.OpenRun> few = new ArrayList<>();
        private final List<Worn> worn = new ArrayList<>();
        private final int most;
        private int inUse;

        Weighing(@Nullable String size, int most) {
            this.most = most;
            Map<ShopLaws.Key, WearLaw> seen =
                    runs.laws(size).parallelStream().collect(Collectors.toConcurrentMap(key -> key, DueTaps.this::law));
            shop = ShopLaws.of(key -> seen.computeIfAbsent(key, DueTaps.this::law));
            runs.open(size, run -> {
                inUse++;
                if (few.size() < MOST) {
                    few.add(run);
                }
                double share = shop.usedMuch(run.law(), run.run());
                if (share > 0) {
                    worn.add(new Worn(run, share));
                }
            });
            worn.sort(Comparator.comparingDouble(Worn::share)
                    .reversed()
                    .thenComparing(one -> one.run.mark().text()));
        }

        int left() {
            return Math.max(0, worn.size() - most);
        }

        List<ShopLaws.Found> all() {
            return found(shop, few);
        }

        List<ShopLaws.Found> due() {
            List<RunRecords.OpenRun> due = worn.subList(0, Math.min(most, worn.size())).parallelStream()
                    .map(Worn::run)
                    .filter(run -> shop.isDue(run.law(), run.run()))
                    .toList();
            return found(shop, due);
        }
    }

    private List<ShopLaws.Found> found(ShopLaws shop, List<RunRecords.OpenRun> open) {
        List<TapOnRecord> taps = new ArrayList<>();
        open.forEach(run -> runs.tap(run.mark()).ifPresent(taps::add));
        return shop.found(taps);
    }

    /** Laws for one question, which sees each of them as of one moment. */
    public Function<ShopLaws.Key, WearLaw> asked() {
        Map<ShopLaws.Key, WearLaw> seen = new HashMap<>();
        return key -> {
            synchronized (seen) {
                return seen.computeIfAbsent(key, this::law);
            }
        };
    }

    WearLaw law(ShopLaws.Key key) {
        RunRecords.Stamp stamp = runs.stamp(key);
        synchronized (laws) {
            Law kept = laws.get(key);
            if (kept != null && kept.stamp.equals(stamp)) {
                return kept.law;
            }
        }
        Law learned = new Law(stamp, ShopLaws.law(key, runs.of(key)));
        synchronized (laws) {
            laws.put(key, learned);
        }
        return learned.law;
    }
}
