// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.time.ZonedDateTime;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import landfall.fault.Answer;
import landfall.history.Mark;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.Stores;
import landfall.store.backup.Backup;
import landfall.store.crib.Crib;
import landfall.store.crib.Kept;
import landfall.store.crib.Wanted;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TableTest {
    private static final ZonedDateTime NOW = ZonedDateTime.parse("2026-11-25T08:00:00Z");
    private static final String THINGS = """
            mark,thread,flutes.count,shank.diameter,place,price
            T-1,M8x1.25-6H,3,8 mm,drawer 3,18.50 EUR
            T-2,1/4-20 UNC-2B,4,0.255,drawer 4,
            T-3,M6x1,,,,
            """;
    private static final String EVENTS = """
            mark,event,at,by,holes,material,way,stock
            T-1,tapped,2026-03-02,Ida,40,4140 annealed,,
            T-1,sharpened,2026-03-09,Ida,,,chamfer,0.3
            T-1,tapped,2026-04-01,Jon,25,,,
            T-2,sharpened,2026-04-02,Jon,,,face,.01
            """;

    static Stream<StoreAddress> stores() {
        return Stores.both();
    }

    @ParameterizedTest
    @MethodSource("stores")
    void thingsAndEventsAreTakenAndReadingAgainChangesNothing(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            Report things = read(store, THINGS, keep());
            assertThat(things.bad()).isEmpty();
            assertThat(things.addedRows()).isEqualTo(3);
            assertThat(read(store, EVENTS, keep()).addedRows()).isEqualTo(4);
            Kept kept = new Crib(store).find(new Mark("T-1")).orElseThrow();
            assertThat(kept.history().standing().uses().holes()).isEqualTo(65);
            assertThat(kept.history().standing().uses().sinceSharp()).isEqualTo(25);
            assertThat(kept.history().standing().place()).isEqualTo("drawer 3");
            assertThat(new Crib(store).find(new Mark("T-2")).orElseThrow().events())
                    .last()
                    .satisfies(event -> assertThat(event.fields()).containsEntry("stock", ".01"));
            var before = Backup.content(store);
            assertThat(read(store, THINGS, keep()).unchangedRows()).isEqualTo(3);
            assertThat(read(store, EVENTS, keep()).unchangedRows()).isEqualTo(4);
            assertThat(Backup.content(store)).isEqualTo(before);
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void badRowsAreToldWithLineFieldAndMendAndTheGoodOnesAreTaken(StoreAddress address) {
        String table = """
                mark,thread,flutes.count
                T-1,M8x1.25,3
                T 2,M8x1.25,3
                T-3,foo-20,3
                T-4,M8x1.25,two
                T-1,M6x1,3
                """;
        try (Store store = Stores.open(address)) {
            Report report = read(store, table, keep());
            assertThat(report.rows()).isEqualTo(5);
            assertThat(report.good()).isEqualTo(1);
            assertThat(report.bad()).extracting(Report.Bad::line).containsExactly(3L, 4L, 5L, 6L);
            assertThat(report.bad())
                    .extracting(bad -> bad.finding().field())
                    .containsExactly("mark", "thread", "flutes.count", "mark");
            assertThat(report.bad())
                    .allSatisfy(bad -> assertThat(bad.finding().mend()).isNotBlank());
            assertThat(new Crib(store).list(Wanted.all())).hasSize(1);
        }
    }

    @Test
    void allOrNoneKeepsNothingWhenOneRowIsBadAndADryRunKeepsNothingAtAll() {
        String table = "mark,thread\nT-1,M8x1.25\nT-2,nonsense\n";
        try (Store store = Stores.open(Stores.newFile())) {
            Report report = read(store, table, new Wish.How(false, true, false));
            assertThat(report.isKept()).isFalse();
            assertThat(report.good()).isEqualTo(1);
            assertThat(new Crib(store).list(Wanted.all())).isEmpty();
            assertThat(read(store, THINGS, new Wish.How(true, false, false)).isKept())
                    .isFalse();
            assertThat(new Crib(store).list(Wanted.all())).isEmpty();
        }
    }

    @Test
    void anotherCardUnderOneMarkIsRefusedUnlessItIsToReplace() {
        try (Store store = Stores.open(Stores.newFile())) {
            read(store, THINGS, keep());
            String other = "mark,thread,flutes.count\nT-1,M8x1.25-6H,4\n";
            assertThat(read(store, other, keep()).bad().get(0).finding().sentence())
                    .isEqualTo("mark: \"T-1\" is in the crib with another card."
                            + " To mend: give it another mark, or write --replace for the card of the table.");
            assertThat(read(store, other, new Wish.How(false, false, true)).replacedRows())
                    .isEqualTo(1);
            assertThat(new Crib(store)
                            .find(new Mark("T-1"))
                            .orElseThrow()
                            .item()
                            .card())
                    .containsEntry("flutes.count", "4");
        }
    }

    @Test
    void unknownColumnsAreRefusedWithTheNearestAndCanBeMapped() {
        try (Store store = Stores.open(Stores.newFile())) {
            String table = "Tap no,thraed,Remark\nT-1,M8x1.25,old\n";
            assertThat(answer(store, table, Map.of("Tap no", "mark"), keep()).findings())
                    .extracting(finding -> finding.sentence())
                    .containsExactly(
                            "columns: \"thraed\" is not a column that is known here. To mend: write thread, the nearest,"
                                    + " or tell what it is: --map \"thraed=..\"; --map \"thraed=\" passes it over.",
                            "columns: \"Remark\" is not a column that is known here. To mend: write mark, the nearest,"
                                    + " or tell what it is: --map \"Remark=..\"; --map \"Remark=\" passes it over.");
            Map<String, String> map = Map.of("Tap no", "mark", "thraed", "thread", "Remark", "");
            assertThat(answer(store, table, map, keep()).orThrow().addedRows()).isEqualTo(1);
        }
    }

    @Test
    void brokenTablesAreToldAndWhatCameBeforeIsTaken() {
        try (Store store = Stores.open(Stores.newFile())) {
            String open = "mark,thread,place\nT-1,M8x1.25,a\nT-2,M8x1.25,\"never closed\nT-3,M8x1.25,b\n";
            Report report = read(store, open, keep());
            assertThat(report.addedRows() + report.badRows()).isEqualTo(report.rows());
            Report bytes = read(store, "mark,thread,place\nT-8,M8x1.25,\uFFFD\nT-9,M8x1.25,b\n", keep());
            assertThat(bytes.bad().get(0).finding().why()).isEqualTo("is not text in UTF-8");
            assertThat(bytes.good()).isEqualTo(1);
            assertThat(answer(store, "", Map.of(), keep()).findings().get(0).why())
                    .isEqualTo("are missing: the file is empty");
            assertThat(answer(store, "thread,place\nM8,a\n", Map.of(), keep())
                            .findings()
                            .get(0)
                            .why())
                    .isEqualTo("have no mark");
        }
    }

    @Test
    void theFoldOfManyEventsIsThatOfTheirHistory() {
        try (Store store = Stores.open(Stores.newFile())) {
            read(store, THINGS, keep());
            StringBuilder table = new StringBuilder("mark,event,at,holes,way,ticket\n");
            Random random = new Random(3);
            for (int i = 0; i < 3000; i++) {
                String mark = "T-" + (1 + random.nextInt(3));
                boolean ground = random.nextInt(10) == 0;
                table.append(mark).append(ground ? ",sharpened" : ",tapped").append(",2026-05-01,");
                table.append(ground ? ",chamfer," : (1 + random.nextInt(9)) + ",,")
                        .append("r")
                        .append(i)
                        .append('\n');
            }
            assertThat(read(store, table.toString(), keep()).addedRows()).isEqualTo(3000);
            Crib crib = new Crib(store);
            crib.list(Wanted.all()).forEach(row -> {
                var standing =
                        crib.find(row.item().mark()).orElseThrow().history().standing();
                assertThat(row.counts().holes()).isEqualTo(standing.uses().holes());
                assertThat(row.counts().sinceSharp()).isEqualTo(standing.uses().sinceSharp());
                assertThat(row.counts().sharpenings()).isEqualTo(standing.uses().sharpenings());
                assertThat(row.seen().lastSeq()).isEqualTo(standing.last().seq());
            });
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void whatIsWrittenOutReadsBackToTheSameCrib(StoreAddress address) {
        try (Store store = Stores.open(address);
                Store other = Stores.open(Stores.newFile())) {
            read(store, THINGS.replace("drawer 4", "=cmd()"), keep());
            read(store, EVENTS, keep());
            StringWriter things = new StringWriter();
            StringWriter events = new StringWriter();
            assertThat(TableOut.things(store, things)).isEqualTo(3);
            assertThat(TableOut.events(store, events)).isEqualTo(7);
            assertThat(events.toString()).contains("'=cmd()");
            assertThat(read(other, things.toString(), keep()).bad()).isEmpty();
            assertThat(read(other, events.toString(), keep()).bad()).isEmpty();
            assertThat(Backup.content(other)).isEqualTo(Backup.content(store));
        }
    }

    private static Wish.How keep() {
        return new Wish.How(false, false, false);
    }

    private static Report read(Store store, String table, Wish.How how) {
        return answer(store, table, Map.of(), how).orThrow();
    }

    private static Answer<Report> answer(Store store, String table, Map<String, String> columns, Wish.How how) {
        Reader in = new StringReader(table);
        return TableIn.read(store, in, new Wish(columns, how, "Ida", NOW), TableIn.Watch.NOBODY);
    }
}
