// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import landfall.history.Event;
import landfall.history.Happening;
import landfall.history.History;
import landfall.history.Price;
import landfall.history.SharpeningWay;
import landfall.quantity.Length;
import landfall.wear.Run.End;
import landfall.wear.Run.Start;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RunsTest {
    private static final Instant START = Instant.parse("2026-01-05T07:00:00Z");
    private static final Happening BOUGHT = new Happening.Bought(new Price(new BigDecimal("18.50"), "EUR"), null);
    private static final Happening GROUND = new Happening.Sharpened(SharpeningWay.CHAMFER, null, null, null);

    @Test
    void aRunGoesFromSharpToSharp() {
        List<Run> runs = runs(BOUGHT, tapped(40), tapped(60), GROUND, tapped(30));
        assertThat(runs).extracting(Run::holes).containsExactly(100L, 30L);
        assertThat(runs).extracting(run -> run.span().start()).containsExactly(Start.NEW, Start.SHARPENED);
        assertThat(runs).extracting(run -> run.span().end()).containsExactly(End.SHARPENED, End.OPEN);
        assertThat(Objects.requireNonNull(Runs.open(runs)).holes()).isEqualTo(30);
    }

    @Test
    void aTapThatWasNotBoughtOnRecordMayHaveCutBefore() {
        assertThat(runs(tapped(40), GROUND).get(0).span().start()).isEqualTo(Start.UNKNOWN);
        assertThat(runs(tapped(40), BOUGHT, tapped(1)).get(0).span().start()).isEqualTo(Start.UNKNOWN);
    }

    @Test
    void aBrokenTapHasNoOpenRun() {
        List<Run> runs = runs(BOUGHT, tapped(40), new Happening.Broken("reversal", true));
        assertThat(runs).singleElement().extracting(run -> run.span().end()).isEqualTo(End.BROKEN);
        assertThat(Runs.open(runs)).isNull();
    }

    @Test
    void whatWasTakenBackIsNoRun() {
        List<Run> runs = runs(BOUGHT, tapped(40), GROUND, tapped(5), new Happening.Corrected(3, "other tap"));
        assertThat(runs).singleElement().extracting(Run::holes).isEqualTo(45L);
    }

    @Test
    void aWearLandStandsAfterTheHolesThatMadeIt() {
        Happening measured = new Happening.Measured(new Happening.Sizes(Length.ofMm(0.12), null, null, null));
        Run run = runs(BOUGHT, tapped(40), measured, tapped(5)).get(0);
        assertThat(run.lands()).containsExactly(new Run.Land(1, Length.ofMm(0.12)));
    }

    @Test
    void runsPartByTheMaterialOfMostHoles() {
        List<Run> runs = runs(BOUGHT, tapped(40), tapped(10, "304"), GROUND, tapped(3, "304"), GROUND, tapped(9, null));
        assertThat(Runs.byMaterial(runs)).containsOnlyKeys("1045", "304", "");
    }

    @Test
    void groundTwiceWithoutAHoleIsOneGrind() {
        assertThat(runs(BOUGHT, tapped(40), GROUND, GROUND, tapped(3))).hasSize(2);
    }

    private static Happening tapped(int holes) {
        return tapped(holes, "1045");
    }

    private static Happening tapped(int holes, @Nullable String material) {
        return new Happening.Tapped(
                new Happening.Holes(holes, false),
                new Happening.Work(material, null),
                new Happening.Felt(null, null, null));
    }

    private static List<Run> runs(Happening... happenings) {
        List<Event> events = new ArrayList<>();
        for (Happening what : happenings) {
            events.add(new Event(events.size() + 1, START.plusSeconds(60L * events.size()), "Ida", what));
        }
        return Runs.of("T1", History.of(events));
    }
}
