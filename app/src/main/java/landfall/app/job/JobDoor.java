// SPDX-License-Identifier: Apache-2.0
package landfall.app.job;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import landfall.app.crib.CribDoor;
import landfall.cards.job.JobCard;
import landfall.cards.job.JobPlan;
import landfall.cards.job.JobState;
import landfall.cards.job.LineWords;
import landfall.fault.Answer;
import landfall.history.Mark;
import landfall.route.Planned;
import landfall.route.Route;
import landfall.store.crib.Crib;
import landfall.store.job.Jobs;
import landfall.working.Worked;

/** The store behind the pages of jobs, and plans by what its crib holds. */
final class JobDoor {
    private final CribDoor door;

    JobDoor(CribDoor door) {
        this.door = door;
    }

    Jobs jobs() {
        return new Jobs(door.store());
    }

    ZonedDateTime now() {
        return ZonedDateTime.now(door.clock())
                .withZoneSameInstant(ZoneId.systemDefault())
                .truncatedTo(ChronoUnit.MILLIS);
    }

    Answer<Worked<Route>> plan(JobCard card) {
        LocalDate today = now().toLocalDate();
        return JobPlan.of(card, JobHolds.of(door.crib(), door.due(), card), today);
    }

    RouteView view(JobState job, Route route) {
        Crib crib = door.crib();
        Map<String, Map<String, String>> cards = new LinkedHashMap<>();
        for (Planned planned : route.holes()) {
            String mark = LineWords.of(planned).mark();
            if (!mark.isEmpty() && !cards.containsKey(mark)) {
                crib.find(new Mark(mark))
                        .ifPresent(kept -> cards.put(mark, kept.item().card()));
            }
        }
        return new RouteView(job, route, cards);
    }
}
