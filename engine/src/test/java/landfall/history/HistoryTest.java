// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import landfall.quantity.Length;
import org.junit.jupiter.api.Test;

class HistoryTest {
    private static final Instant START = Instant.parse("2026-01-05T07:00:00Z");

    @Test
    void holesCountOnUntilTheTapIsGround() {
        History history = told(holes(40, false), sharpened(), holes(25, true), holes(5, false));
        assertThat(history.standing().uses()).isEqualTo(new Uses(70, 30, true, 1));
        assertThat(told(holes(25, true), sharpened()).standing().uses()).isEqualTo(new Uses(25, 0, false, 1));
    }

    @Test
    void grindingForgetsWhatWasMeasuredAndTheVerdict() {
        Happening measured = new Happening.Measured(
                new Happening.Sizes(Length.ofMm(0.2), Length.ofMm(7.21), null, Length.ofMm(2.6)));
        Happening thread = new Happening.Measured(new Happening.Sizes(null, null, Length.ofMm(20), null));
        History before = told(measured, thread, new Happening.Inspected(true, null));
        assertThat(before.standing().condition().sizes())
                .isEqualTo(new Happening.Sizes(Length.ofMm(0.2), Length.ofMm(7.21), Length.ofMm(20), Length.ofMm(2.6)));
        assertThat(before.standing().condition().passed()).isTrue();
        History after = told(measured, thread, new Happening.Inspected(true, null), sharpened());
        assertThat(after.standing().condition().sizes()).isEqualTo(new Happening.Sizes(null, null, null, null));
        assertThat(after.standing().condition().passed()).isNull();
    }

    @Test
    void aCorrectionTakesBackAndCanBeTakenBackInItsTurn() {
        History once = told(holes(40, false), corrected(1));
        assertThat(once.standing().uses().holes()).isZero();
        assertThat(once.holding()).extracting(Event::seq).containsExactly(2L);
        History twice = told(holes(40, false), corrected(1), corrected(2));
        assertThat(twice.standing().uses().holes()).isEqualTo(40);
    }

    @Test
    void whatWasToldLateCountsWhereItHappened() {
        Event ground = new Event(1, START.plusSeconds(100), "Ida", sharpened());
        Event before = new Event(2, START, "Ida", holes(40, false));
        assertThat(History.of(List.of(ground, before)).standing().uses()).isEqualTo(new Uses(40, 0, false, 1));
    }

    @Test
    void anEndedThingTakesOnlyItsCorrection() {
        History broken = told(holes(3, false), new Happening.Broken("reversal", false));
        assertThat(broken.against(ItemKind.TAP, holes(1, false)).orElseThrow().sentence())
                .isEqualTo("event: \"tapped\" cannot happen to a tap that is broken."
                        + " To mend: if it is not, take event 2 back: corrected --takes-back 2.");
        assertThat(broken.against(ItemKind.TAP, corrected(2))).isEmpty();
    }

    @Test
    void whatCannotBeTakenBackIsRefusedWithTheNumbersThatCan() {
        History history = told(holes(3, false), holes(4, false), corrected(1));
        assertThat(history.against(ItemKind.TAP, corrected(1)).orElseThrow().sentence())
                .isEqualTo("takes-back: \"1\" is taken back already. To mend: write one of the last, 2, 3.");
        assertThat(history.against(ItemKind.TAP, corrected(9)).orElseThrow().why())
                .isEqualTo("is not the number of an event of this mark");
        assertThat(told().against(ItemKind.TAP, corrected(1)).orElseThrow().mend())
                .isEqualTo("nothing has happened yet");
    }

    @Test
    void noFixtureCutsHolesAndNoTapIsCalibrated() {
        assertThat(told().against(ItemKind.FIXTURE, holes(1, false))
                        .orElseThrow()
                        .why())
                .isEqualTo("does not happen to a fixture");
        Happening calibrated = new Happening.Calibrated(true, LocalDate.of(2027, 1, 1));
        assertThat(told().against(ItemKind.TAP, calibrated)).isPresent();
        assertThat(told().against(ItemKind.GAUGE, calibrated)).isEmpty();
    }

    /** Taking an event back leaves the standing as if it had never been told, whatever else happened. */
    @Test
    void takingBackIsAsIfItHadNeverBeen() {
        Random random = new Random(7);
        for (int i = 0; i < 2000; i++) {
            List<Happening> all = new ArrayList<>();
            for (int k = random.nextInt(12) + 1; k > 0; k--) {
                all.add(any(random));
            }
            int gone = random.nextInt(all.size());
            List<Happening> with = new ArrayList<>(all);
            with.add(corrected(gone + 1));
            List<Happening> kept = new ArrayList<>(all);
            kept.remove(gone);
            Standing taken = told(with.toArray(Happening[]::new)).standing();
            Standing never = told(kept.toArray(Happening[]::new)).standing();
            assertThat(taken.uses()).isEqualTo(never.uses());
            assertThat(taken.condition()).isEqualTo(never.condition());
            assertThat(taken.status()).isEqualTo(never.status());
            assertThat(taken.place()).isEqualTo(never.place());
        }
    }

    @Test
    void theOrderInWhichEventsAreHandedOverDoesNotMatter() {
        List<Event> events = new ArrayList<>(
                told(holes(3, false), sharpened(), holes(4, true)).all());
        Standing inOrder = History.of(events).standing();
        Collections.reverse(events);
        assertThat(History.of(events).standing()).isEqualTo(inOrder);
    }

    @Test
    void twoEventsOfOneNumberAreAFault() {
        Event one = new Event(1, START, "Ida", holes(1, false));
        assertThatThrownBy(() -> History.of(List.of(one, one))).hasMessage("two events numbered 1");
    }

    private static Happening any(Random random) {
        return switch (random.nextInt(6)) {
            case 0 -> holes(random.nextInt(50) + 1, random.nextBoolean());
            case 1 -> sharpened();
            case 2 -> new Happening.Issued("bench " + random.nextInt(3));
            case 3 -> new Happening.Returned("drawer " + random.nextInt(3));
            case 4 -> new Happening.Inspected(random.nextBoolean(), null);
            default -> new Happening.Coated(random.nextBoolean(), null);
        };
    }

    private static History told(Happening... all) {
        List<Event> events = new ArrayList<>();
        for (int i = 0; i < all.length; i++) {
            events.add(new Event(i + 1, START.plusSeconds(60L * i), "Ida", all[i]));
        }
        return History.of(events);
    }

    private static Happening holes(int count, boolean about) {
        return new Happening.Tapped(
                new Happening.Holes(count, about),
                new Happening.Work(null, null),
                new Happening.Felt(null, null, null));
    }

    private static Happening sharpened() {
        return new Happening.Sharpened(SharpeningWay.CHAMFER, Length.ofMm(0.3), null, null);
    }

    private static Happening corrected(long seq) {
        return new Happening.Corrected(seq, "wrong tap");
    }
}
