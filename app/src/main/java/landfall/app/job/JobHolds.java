// SPDX-License-Identifier: Apache-2.0
package landfall.app.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import landfall.app.crib.DueTaps;
import landfall.cards.job.JobCard;
import landfall.cards.job.JobPlan;
import landfall.cards.job.ShopGauges;
import landfall.cards.job.ShopTaps;
import landfall.history.ItemKind;
import landfall.route.GaugeOnHand;
import landfall.route.HoleLine;
import landfall.store.crib.Crib;
import landfall.store.crib.Kept;
import landfall.store.crib.Row;
import landfall.store.crib.Wanted;

/** What the crib holds for the threads of a job; broken and scrapped taps teach the wear law too. */
public final class JobHolds {
    private JobHolds() {}

    public static JobPlan.Holds of(Crib crib, DueTaps due, JobCard card) {
        Set<String> sizes = new TreeSet<>();
        for (HoleLine line : card.lines()) {
            sizes.add(line.callOut().withoutClass().normal());
        }
        List<ShopTaps.OfCrib> taps = new ArrayList<>();
        List<GaugeOnHand> gauges = new ArrayList<>();
        for (String size : sizes) {
            for (Kept kept : all(crib, ItemKind.TAP, size)) {
                ShopTaps.OfCrib.of(
                                kept.item().mark().text(),
                                kept.item().handSet(),
                                kept.item().card(),
                                kept.history())
                        .ifPresent(taps::add);
            }
            for (Kept kept : all(crib, ItemKind.GAUGE, size)) {
                ShopGauges.of(kept.item().mark().text(), kept.item().card(), kept.history())
                        .ifPresent(gauges::add);
            }
        }
        return new JobPlan.Holds(new ShopTaps(taps, due.asked()), gauges);
    }

    private static List<Kept> all(Crib crib, ItemKind kind, String size) {
        List<Kept> all = new ArrayList<>();
        for (Row row : crib.list(new Wanted(kind, size, true, Integer.MAX_VALUE))) {
            crib.find(row.item().mark()).ifPresent(all::add);
        }
        return all;
    }
}
