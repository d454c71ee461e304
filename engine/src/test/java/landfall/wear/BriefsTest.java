// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import landfall.history.Event;
import landfall.history.Happening;
import landfall.history.History;
import landfall.history.Price;
import landfall.history.SharpeningWay;
import landfall.history.Standing;
import landfall.quantity.Length;
import landfall.quantity.Torque;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class BriefsTest {
    private static final Instant START = Instant.parse("2026-01-05T07:00:00Z");

    @Test
    void runsInBriefAreThoseOfTheWholeHistory() {
        Random chance = new Random(7);
        for (int tap = 0; tap < 300; tap++) {
            History history = History.of(events(chance, 1 + chance.nextInt(60)));
            assertThat(Briefs.of("T", history).all())
                    .isEqualTo(Runs.of("T", history).stream().map(Brief::of).toList());
        }
    }

    @Test
    void goingOnFromTheOpenRunAndTheStandingTellsTheSameAsTheWholeHistory() {
        Random chance = new Random(8);
        for (int tap = 0; tap < 300; tap++) {
            List<Event> events = events(chance, 1 + chance.nextInt(60));
            List<Brief> kept = new ArrayList<>();
            Brief open = Objects.requireNonNull(Briefs.fresh("T").open());
            Standing standing = Standing.NEW;
            for (Event event : events) {
                Briefs briefs = Briefs.after(open);
                briefs.take(event);
                standing = standing.then(event);
                List<Brief> all = new ArrayList<>(briefs.all());
                Brief now = briefs.open();
                if (now == null) {
                    kept.addAll(all);
                    break;
                }
                open = all.remove(all.size() - 1);
                kept.addAll(all);
            }
            History history = History.of(events);
            if (!standing.status().ended()) {
                kept.add(open);
            }
            assertThat(kept).isEqualTo(Briefs.of("T", history).all());
            assertThat(standing).isEqualTo(history.standing());
        }
    }

    @Test
    void aLawOfRunsInBriefIsThatOfTheRuns() {
        List<Run> runs = new Shop(5, 120, 0.4).measured(40, 160);
        WearLaw law = WearLaw.of(runs, Shop.PRACTICE);
        WearLaw brief = WearLaw.ofBriefs(runs.stream().map(Brief::of).toList(), Shop.PRACTICE);
        Run open = Shop.run("O", Run.End.OPEN, 40, null);
        assertThat(brief.records()).isEqualTo(law.records());
        assertThat(brief.dueIn(Brief.of(open)).value())
                .isEqualTo(law.dueIn(open).value());
    }

    @Test
    void holesOfManyDepthsCountAsTheSumOfTheirThreads() {
        Tally tally = Tally.NONE;
        double diameters = 0;
        Random chance = new Random(9);
        for (int i = 0; i < 500; i++) {
            double depth = 5 + chance.nextInt(400) / 16.0;
            int holes = 1 + chance.nextInt(90);
            tally = tally.plus(cut(holes, Shop.C45.id(), Length.ofMm(depth), null, null));
            diameters += holes * depth / Shop.PRACTICE.subject().major().mm();
        }
        Work work = Work.of(List.of(), Shop.PRACTICE);
        assertThat(work.diameters(tally)).isCloseTo(diameters, within(diameters * 1e-12));
    }

    @Test
    void whatIsOverDoesNotGoOn() {
        Brief over = Brief.of(Shop.run("A", Run.End.SHARPENED, 60, null));
        assertThatThrownBy(() -> Briefs.after(over)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anEventBeforeOthersIsNotTakenAsTheNext() {
        Standing standing = Standing.NEW.then(new Event(1, START, "Ida", new Happening.Moved("here")));
        Event before = new Event(2, START.minusSeconds(1), "Ida", new Happening.Moved("there"));
        assertThat(standing.isBefore(before)).isFalse();
        assertThatThrownBy(() -> standing.then(before)).isInstanceOf(IllegalArgumentException.class);
        assertThat(standing.isBefore(new Event(2, START, "Ida", new Happening.Corrected(1, "no"))))
                .isFalse();
    }

    /** In the order of time; the tap may end with the last. */
    private static List<Event> events(Random chance, int count) {
        List<Event> events = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            Happening what =
                    i == count && chance.nextInt(3) == 0 ? new Happening.Broken(null, false) : happening(chance);
            events.add(new Event(i, START.plusSeconds(60L * i), "Ida", what));
        }
        return events;
    }

    private static Happening happening(Random chance) {
        Length width = Length.ofMm(chance.nextInt(40) / 100.0);
        return switch (chance.nextInt(12)) {
            case 0 -> new Happening.Bought(new Price(new BigDecimal("18.50"), "EUR"), null);
            case 1 -> new Happening.Sharpened(SharpeningWay.CHAMFER, null, null, null);
            case 2 -> new Happening.Measured(new Happening.Sizes(width, null, null, null));
            case 3 -> new Happening.Measured(new Happening.Sizes(null, width, null, null));
            case 4 -> new Happening.Issued("bench");
            default ->
                cut(
                        1 + chance.nextInt(40),
                        List.of("1045", "304", "").get(chance.nextInt(3)),
                        chance.nextInt(3) == 0 ? null : Length.ofMm(10 + chance.nextInt(3)),
                        chance.nextInt(3) == 0 ? Torque.ofNm(chance.nextInt(9)) : null,
                        chance.nextInt(4) == 0 ? Happening.Feel.values()[chance.nextInt(3)] : null);
        };
    }

    private static Happening.Tapped cut(
            int holes,
            String material,
            @Nullable Length depth,
            @Nullable Torque torque,
            Happening.@Nullable Feel feel) {
        return new Happening.Tapped(
                new Happening.Holes(holes, holes % 5 == 0),
                new Happening.Work(material.isEmpty() ? null : material, depth),
                new Happening.Felt(torque, feel, null));
    }
}
