// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cost.Bench;
import landfall.fault.Answer;
import landfall.history.Price;
import landfall.quantity.Money;
import landfall.route.GaugeOnHand;
import landfall.route.Route;
import landfall.route.RouteWish;
import landfall.route.TapShelf;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** Plans a job with what a shop has. */
public final class JobPlan {
    private JobPlan() {}

    /**
     * What the crib holds for a job.
     *
     * @param gauges of the crib; those of the job's own fields are added
     */
    public record Holds(TapShelf taps, List<GaugeOnHand> gauges) {
        public static final Holds NOTHING = new Holds(TapShelf.BARE, List.of());

        public Holds {
            gauges = List.copyOf(gauges);
        }
    }

    /** The route, or why there is none; fields of a line read {@code holes.2.callout}. */
    public static Answer<Worked<Route>> of(JobCard card, Holds holds, LocalDate today) {
        Entries job = card.judged();
        return ShopGauges.of(job.get(JobForms.GAUGES).orElse(List.of())).then(named -> {
            List<GaugeOnHand> gauges = new ArrayList<>(holds.gauges);
            named.stream()
                    .filter(gauge -> holds.gauges.stream().noneMatch(kept -> isAlike(kept, gauge)))
                    .forEach(gauges::add);
            return Route.of(new RouteWish(
                    card.lines(),
                    new RouteWish.Shop(job.get(JobForms.DRILLS).orElse(null), holds.taps, gauges),
                    job.get(JobForms.DRIVE).orElse(null),
                    new RouteWish.Prices(
                            money(job, JobForms.HOUR),
                            money(job, JobForms.TAP_PRICE),
                            money(job, JobForms.SPOILT),
                            job.get(JobForms.SHARPENINGS).orElse(null)),
                    today));
        });
    }

    /** The crib knows more of a plug than the shop's card does: it is not counted twice. */
    private static boolean isAlike(GaugeOnHand kept, GaugeOnHand named) {
        return kept.callOut().thread().equals(named.callOut().thread())
                && kept.callOut().classes().equals(named.callOut().classes());
    }

    /** What keeps a route from being made, by the lines of what was given. */
    public static List<Amiss> amiss(Answer<Worked<Route>> route, JobGiven given) {
        return Amiss.of(route.findings(), given.rows());
    }

    private static @Nullable Money money(Entries job, Field<Price> field) {
        return job.get(field).map(Bench::money).orElse(null);
    }
}
