// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
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
     * Every tap in use whose material is known; of very many those that are due or may be. The first due at the head.
     */
    public Soonest soonest() {
        List<RunRecords.OpenRun> open = new ArrayList<>();
        int[] all = new int[1];
        runs.open(null, run -> {
            all[0]++;
            if (open.size() < MOST) {
                open.add(run);
            }
        });
        List<ShopLaws.Found> taps = all[0] > MOST ? due(null) : found(ShopLaws.of(asked()), open);
        return new Soonest(taps, all[0] > MOST ? all[0] - taps.size() : 0);
    }

    /** @param later taps that are due long hence and not among those told */
    public record Soonest(List<ShopLaws.Found> taps, int later) {
        public Soonest {
            taps = List.copyOf(taps);
        }
    }

    /**
     * Those that are due or may be, the first due at the head.
     *
     * @param size call-out without class; null for all
     */
    public List<ShopLaws.Found> due(@Nullable String size) {
        ShopLaws shop = ShopLaws.of(asked());
        List<RunRecords.OpenRun> worn = new ArrayList<>();
        runs.open(size, run -> {
            if (shop.mayBeDue(run.law(), run.run())) {
                worn.add(run);
            }
        });
        List<RunRecords.OpenRun> due = worn.parallelStream()
                .filter(run -> shop.isDue(run.law(), run.run()))
                .toList();
        return found(shop, due);
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

    synchronized WearLaw law(ShopLaws.Key key) {
        RunRecords.Stamp stamp = runs.stamp(key);
        Law kept = laws.get(key);
        if (kept == null || !kept.stamp.equals(stamp)) {
            kept = new Law(stamp, ShopLaws.law(key, runs.of(key)));
            laws.put(key, kept);
        }
        return kept.law;
    }
}
