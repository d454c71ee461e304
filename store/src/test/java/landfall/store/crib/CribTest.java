// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.Told;
import landfall.fault.Answer;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.history.Status;
import landfall.quantity.UnitSystem;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.Stores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CribTest {
    private static final Instant NOW = Instant.parse("2026-11-25T07:00:00Z");

    static Stream<StoreAddress> stores() {
        return Stores.both();
    }

    @ParameterizedTest
    @MethodSource("stores")
    void whatIsAddedIsFoundAgainAsItWasTyped(StoreAddress address) {
        Item tap = tap("T-17", "1/4-20 UNC-2B", Map.of("shank.diameter", "0.255"));
        try (Store store = Stores.open(address)) {
            assertThat(new Crib(store).add(tap)).isEqualTo(Answer.of(tap));
        }
        try (Store store = Stores.open(address)) {
            Item found = new Crib(store).find(tap.mark()).orElseThrow().item();
            assertThat(found).isEqualTo(tap);
            assertThat(found.card()).containsEntry("shank.diameter", "0.255 in");
            assertThat(found.size()).isEqualTo("1/4-20 UNC");
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void aMarkThatIsTakenIsRefused(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            Crib crib = new Crib(store);
            crib.add(tap("T-17", "M8x1.25", Map.of())).orThrow();
            assertThat(crib.add(tap("T-17", "M6x1", Map.of())).findings().get(0).sentence())
                    .isEqualTo("mark: \"T-17\" is the mark of another thing already."
                            + " To mend: look at it with landfall crib show T-17, or choose another mark.");
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void theProgramNumbersOnFromWhatItGave(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            Crib crib = new Crib(store);
            Mark taken = Mark.numbered(ItemKind.TAP, 2);
            crib.add(tap(taken.text(), "M8x1.25", Map.of())).orThrow();
            List<String> marks = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                marks.add(crib.addNumbered(ItemKind.TAP, "", Map.of("thread", "M8x1.25"))
                        .mark()
                        .text());
            }
            assertThat(marks)
                    .containsExactly(
                            Mark.numbered(ItemKind.TAP, 1).text(),
                            Mark.numbered(ItemKind.TAP, 3).text(),
                            Mark.numbered(ItemKind.TAP, 4).text());
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void eventsFoldAndTheListAgreesWithTheFold(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            Crib crib = new Crib(store);
            Mark mark = crib.add(tap("T-17", "M8x1.25", Map.of())).orThrow().mark();
            log(crib, mark, EventKind.TAPPED, Map.of("holes", "40", "material", "4140 annealed"));
            log(crib, mark, EventKind.SHARPENED, Map.of("way", "chamfer", "stock", "0.3"));
            log(crib, mark, EventKind.TAPPED, Map.of("holes", "25", "since", "Monday"));
            log(crib, mark, EventKind.LENT, Map.of("to", "Hollow Lane bench 2"));
            Row row = crib.list(Wanted.all()).get(0);
            assertThat(row.counts()).isEqualTo(new Row.Counts(65, 25, 1));
            assertThat(row.status()).isEqualTo(Status.LENT);
            assertThat(row.place()).isEqualTo("Hollow Lane bench 2");
            Kept kept = crib.find(mark).orElseThrow();
            assertThat(kept.history().standing().uses().about()).isTrue();
            assertThat(Row.of(kept.item(), kept.history().standing())).isEqualTo(row);
            assertThat(kept.events().get(1).fields()).containsEntry("stock", "0.3 mm");
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void aBrokenTapCutsNoMoreUntilThatIsTakenBack(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            Crib crib = new Crib(store);
            Mark mark = crib.add(tap("T-17", "M8x1.25", Map.of())).orThrow().mark();
            log(crib, mark, EventKind.BROKEN, Map.of("when", "reversal"));
            assertThat(say(crib, mark, EventKind.TAPPED, Map.of("holes", "1"), null, null)
                            .findings()
                            .get(0)
                            .sentence())
                    .isEqualTo("event: \"tapped\" cannot happen to a tap that is broken."
                            + " To mend: if it is not, take event 1 back: corrected --takes-back 1.");
            log(crib, mark, EventKind.CORRECTED, Map.of("takes-back", "1", "because", "another tap"));
            assertThat(log(crib, mark, EventKind.TAPPED, Map.of("holes", "1"))
                            .standing()
                            .status())
                    .isEqualTo(Status.ON_HAND);
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void aRequestSentTwiceIsKeptOnce(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            Crib crib = new Crib(store);
            Mark mark = crib.add(tap("T-17", "M8x1.25", Map.of())).orThrow().mark();
            for (int i = 0; i < 3; i++) {
                say(crib, mark, EventKind.TAPPED, Map.of("holes", "40"), "phone 7", null)
                        .orThrow();
            }
            assertThat(crib.find(mark).orElseThrow().history().standing().uses().holes())
                    .isEqualTo(40);
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void whoWroteOnWhatIsNoLongerTheLastIsToldWhatHappened(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            Crib crib = new Crib(store);
            Mark mark = crib.add(tap("T-17", "M8x1.25", Map.of())).orThrow().mark();
            log(crib, mark, EventKind.TAPPED, Map.of("holes", "40"));
            log(crib, mark, EventKind.ISSUED, Map.of("to", "bench 2"));
            assertThat(say(crib, mark, EventKind.SCRAPPED, Map.of(), null, 1L)
                            .findings()
                            .get(0)
                            .sentence())
                    .isEqualTo("after: \"1\" is no longer the last: meanwhile 2 issued by Ida."
                            + " To mend: look at T-17 again, and say it again if it still holds.");
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void writersOfTwoProgramsAtOnceLoseNothing(StoreAddress address) throws Exception {
        int writers = 8;
        int each = 20;
        Mark mark;
        try (Store one = Stores.open(address);
                Store two = Stores.open(address)) {
            mark = new Crib(one).add(tap("T-17", "M8x1.25", Map.of())).orThrow().mark();
            ExecutorService hands = Executors.newFixedThreadPool(writers);
            List<Callable<Void>> work = new ArrayList<>();
            for (int writer = 0; writer < writers; writer++) {
                Crib crib = new Crib(writer % 2 == 0 ? one : two);
                work.add(() -> {
                    for (int i = 0; i < each; i++) {
                        log(crib, mark, EventKind.TAPPED, Map.of("holes", "1"));
                    }
                    return null;
                });
            }
            for (Future<Void> done : hands.invokeAll(work)) {
                done.get();
            }
            hands.shutdown();
            Kept kept = new Crib(one).find(mark).orElseThrow();
            assertThat(kept.history().standing().uses().holes()).isEqualTo(writers * each);
            assertThat(kept.events().stream().map(event -> event.event().seq()))
                    .containsExactlyElementsOf(
                            LongStream.rangeClosed(1, writers * each).boxed().toList());
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void aMarkThatNobodyEnteredIsUnknown(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            Crib crib = new Crib(store);
            Mark mark = new Mark("T-99");
            assertThat(crib.find(mark)).isEmpty();
            assertThat(say(crib, mark, EventKind.TAPPED, Map.of("holes", "1"), null, null)
                            .findings())
                    .containsExactly(Crib.unknown(mark));
        }
    }

    private static Item tap(String mark, String thread, Map<String, String> more) {
        Map<String, String> card = new java.util.HashMap<>(more);
        card.put("thread", thread);
        return new Item(
                Mark.read(mark).orThrow(),
                ItemKind.TAP,
                "",
                ItemForms.lasting(ItemKind.TAP, card).orThrow());
    }

    private static Logged log(Crib crib, Mark mark, EventKind kind, Map<String, String> typed) {
        return say(crib, mark, kind, typed, null, null).orThrow();
    }

    private static Answer<Logged> say(
            Crib crib, Mark mark, EventKind kind, Map<String, String> typed, String ticket, Long after) {
        Told told = Told.read(kind, typed, UnitSystem.METRIC).orThrow();
        return crib.log(new Saying(mark, told, new Saying.Who("Ida", NOW), ticket, after));
    }
}
