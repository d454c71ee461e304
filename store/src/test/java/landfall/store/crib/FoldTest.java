// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.ShopLaws;
import landfall.cards.crib.TapOnRecord;
import landfall.cards.crib.Told;
import landfall.history.EventKind;
import landfall.history.History;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.quantity.UnitSystem;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.Stores;
import landfall.store.table.Report;
import landfall.store.table.TableIn;
import landfall.store.table.Wish;
import landfall.tap.FluteKind;
import landfall.wear.Brief;
import landfall.wear.Briefs;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is kept beside the events is what follows from them, however they came in. */
class FoldTest {
    private static final Instant NOW = Instant.parse("2026-11-25T08:00:00Z");
    private static final ShopLaws.Key LAW = new ShopLaws.Key("M8x1.25", FluteKind.STRAIGHT, "1045");

    private final Random random = new Random(11);

    static Stream<StoreAddress> stores() {
        return Stores.both();
    }

    @ParameterizedTest
    @MethodSource("stores")
    void whatIsFoldedEventByEventIsThatOfTheWholeHistory(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            Crib crib = new Crib(store);
            List<Mark> marks = taps(crib, 4);
            for (int i = 0; i < 400; i++) {
                say(crib, marks.get(random.nextInt(marks.size())));
            }
            holdsTogether(store, marks);
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void foldedAnewItIsTheSameToTheLetter(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            Crib crib = new Crib(store);
            List<Mark> marks = taps(crib, 3);
            for (int i = 0; i < 200; i++) {
                say(crib, marks.get(random.nextInt(marks.size())));
            }
            List<String> before = folded(store);
            Refold.all(store, done -> {});
            assertThat(folded(store)).isEqualTo(before).hasSizeGreaterThan(10);
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void aTableOfEventsFoldsAsIfTheyHadBeenSaidOneByOne(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            List<Mark> marks = taps(new Crib(store), 3);
            StringBuilder table = new StringBuilder("mark,event,at,holes,material,way,wear-land,ticket\n");
            for (int i = 0; i < 600; i++) {
                // some are told late
                Instant at = NOW.minus(Duration.ofHours(5000 - i + (random.nextInt(20) == 0 ? 50 : 0)));
                String what = switch (random.nextInt(8)) {
                    case 0 -> "sharpened," + at + ",,,chamfer,";
                    case 1 -> "measured," + at + ",,,,0." + (10 + random.nextInt(20)) + " mm";
                    default -> "tapped," + at + "," + (1 + random.nextInt(40)) + ",1045,,";
                };
                table.append(marks.get(random.nextInt(3)))
                        .append(',')
                        .append(what)
                        .append(",r")
                        .append(i)
                        .append('\n');
            }
            Wish wish = new Wish(
                    Map.of(), new Wish.How(false, false, false), "Ida", ZonedDateTime.parse("2026-11-25T08:00:00Z"));
            Report report = TableIn.read(store, new StringReader(table.toString()), wish, TableIn.Watch.NOBODY)
                    .orThrow();
            assertThat(report.addedRows()).isEqualTo(600);
            holdsTogether(store, marks);
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void anotherCardCarriesTheRunsToAnotherLaw(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            Crib crib = new Crib(store);
            Mark mark = taps(crib, 1).get(0);
            crib.log(saying(mark, EventKind.TAPPED, Map.of("holes", "9", "material", "1045"), NOW))
                    .orThrow();
            RunRecords runs = new RunRecords(store);
            RunRecords.Stamp before = runs.stamp(LAW);
            assertThat(runs.of(LAW)).hasSize(1);
            crib.recard(new Item(mark, ItemKind.TAP, "", card(Map.of("thread", "M8", "flutes.kind", "spiral-point"))));
            assertThat(runs.of(LAW)).isEmpty();
            assertThat(runs.stamp(LAW)).isNotEqualTo(before);
            assertThat(runs.of(new ShopLaws.Key("M8x1.25", FluteKind.SPIRAL_POINT, "1045")))
                    .hasSize(1);
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void aLongHistoryIsLookedAtInParts(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            Crib crib = new Crib(store);
            Mark mark = taps(crib, 1).get(0);
            for (int i = 0; i < 30; i++) {
                crib.log(saying(mark, EventKind.TAPPED, Map.of("holes", "1"), NOW))
                        .orThrow();
            }
            crib.log(saying(mark, EventKind.CORRECTED, Map.of("takes-back", "25", "because", "no"), NOW))
                    .orThrow();
            Glance newest = crib.look(mark, Window.newest(10)).orElseThrow();
            assertThat(newest.events())
                    .extracting(event -> event.event().seq())
                    .startsWith(22L)
                    .endsWith(31L);
            assertThat(newest.earlier()).isEqualTo(21);
            assertThat(newest.standing().uses().holes()).isEqualTo(29);
            assertThat(newest.isTakenBack(newest.events().get(3))).isTrue();
            Glance first = crib.look(mark, new Window(newest.firstSeq(), 100)).orElseThrow();
            assertThat(first.events()).hasSize(21);
            assertThat(first.earlier()).isZero();
        }
    }

    private static void holdsTogether(Store store, List<Mark> marks) {
        Crib crib = new Crib(store);
        RunRecords runs = new RunRecords(store);
        List<Brief> ofLaw = new ArrayList<>();
        for (Mark mark : marks) {
            Kept kept = crib.find(mark).orElseThrow();
            History history = kept.history();
            Glance glance = crib.look(mark, Window.newest(7)).orElseThrow();
            assertThat(glance.standing()).isEqualTo(history.standing());
            assertThat(glance.takenBack()).allMatch(history::isTakenBack);
            assertThat(glance.takenBack()).hasSize((int) history.all().stream()
                    .filter(event -> history.isTakenBack(event.seq()))
                    .count());
            List<Brief> all = Briefs.of(mark.text(), history).all();
            all.stream().filter(run -> run.material().equals("1045")).forEach(ofLaw::add);
            assertThat(runs.tap(mark).map(TapOnRecord::use).orElse(new TapOnRecord.InUse(null, "")))
                    .isEqualTo(
                            history.standing().status().ended()
                                            || Briefs.of(mark.text(), history).open() == null
                                    ? new TapOnRecord.InUse(null, "")
                                    : TapOnRecord.InUse.of(all));
        }
        assertThat(runs.of(LAW)).containsExactlyInAnyOrderElementsOf(ofLaw).isNotEmpty();
    }

    private List<Mark> taps(Crib crib, int count) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            Map<String, String> card = card(Map.of("thread", "M8x1.25-6H"));
            marks.add(crib.add(new Item(new Mark("T-" + i), ItemKind.TAP, "", card))
                    .orThrow()
                    .mark());
        }
        return marks;
    }

    private static Map<String, String> card(Map<String, String> typed) {
        return ItemForms.lasting(ItemKind.TAP, typed).orThrow();
    }

    /** Anything, now and then too late or taken back; what cannot be is refused and changes nothing. */
    private void say(Crib crib, Mark mark) {
        long last = crib.look(mark, Window.newest(1))
                .orElseThrow()
                .standing()
                .last()
                .seq();
        Instant at = NOW.plus(Duration.ofHours(last - (random.nextInt(12) == 0 ? 30 : 0)));
        Saying saying = switch (random.nextInt(20)) {
            case 0 -> saying(mark, EventKind.SHARPENED, Map.of("way", "chamfer"), at);
            case 1 -> saying(mark, EventKind.MEASURED, Map.of("wear-land", "0.12 mm", "thread-length", "20 mm"), at);
            case 2 -> saying(mark, EventKind.INSPECTED, Map.of("passed", "no"), at);
            case 3 -> saying(mark, EventKind.LENT, Map.of("to", "bench 2"), at);
            case 4 -> saying(mark, EventKind.COATED, Map.of("coated", "no"), at);
            case 5 -> saying(mark, EventKind.BOUGHT, Map.of("price", "18.50 EUR"), at);
            case 6 ->
                saying(
                        mark,
                        EventKind.CORRECTED,
                        Map.of("takes-back", String.valueOf(1 + random.nextInt((int) last + 1)), "because", "no"),
                        at);
            case 7 ->
                random.nextInt(3) == 0
                        ? saying(mark, EventKind.BROKEN, Map.of(), at)
                        : saying(mark, EventKind.RETURNED, Map.of("place", "drawer 3"), at);
            default ->
                saying(
                        mark,
                        EventKind.TAPPED,
                        Map.of("holes", String.valueOf(1 + random.nextInt(40)), "material", "1045", "depth", "16 mm"),
                        at);
        };
        crib.log(saying);
    }

    private static Saying saying(Mark mark, EventKind kind, Map<String, String> typed, Instant at) {
        Told told = Told.read(kind, typed, UnitSystem.METRIC).orThrow();
        return new Saying(mark, told, new Saying.Who("Ida", at), null, null);
    }

    private static List<String> folded(Store store) {
        List<String> all = new ArrayList<>(store.read(handle -> handle.createQuery(
                        "select mark, status, place, holes, since_sharp, sharpenings, last_seq, last_at, folded from item"
                                + " order by mark")
                .map((rows, context) -> row(rows, 9))
                .list()));
        all.addAll(store.read(handle -> handle.createQuery(
                        "select mark, number, size, flutes, material, works_in, ending, told from run order by mark, number")
                .map((rows, context) -> row(rows, 8))
                .list()));
        return all;
    }

    private static String row(java.sql.ResultSet rows, int columns) throws java.sql.SQLException {
        StringBuilder text = new StringBuilder();
        for (int i = 1; i <= columns; i++) {
            text.append(rows.getString(i)).append('|');
        }
        return text.toString();
    }
}
