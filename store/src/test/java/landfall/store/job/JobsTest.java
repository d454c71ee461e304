// SPDX-License-Identifier: Apache-2.0
package landfall.store.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.Told;
import landfall.cards.job.DoneMark;
import landfall.cards.job.JobCard;
import landfall.cards.job.JobState;
import landfall.cards.job.JobText;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.history.JobNumber;
import landfall.history.Mark;
import landfall.quantity.UnitSystem;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.Stores;
import landfall.store.backup.Backup;
import landfall.store.crib.Crib;
import landfall.store.crib.Item;
import landfall.store.crib.Saying;
import landfall.store.table.JsonOut;
import landfall.store.table.Report;
import landfall.store.table.TableIn;
import landfall.store.table.TableOut;
import landfall.store.table.Wish;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class JobsTest {
    private static final Instant NOW = Instant.parse("2026-11-25T08:00:00Z");
    private static final Saying.Who IDA = new Saying.Who("Ida", NOW);
    private static final String HOLES = """
            callout,material,depth,kind,count,label,note
            M8x1.25-6H,C45,16,blind,12,A,"oil, not water"
            1/4-20 UNC-2B,C45,.5,through,4,,
            """;

    private static final Wish.How KEEP = new Wish.How(false, false, false);
    private static final Wish.How DRY = new Wish.How(true, false, false);

    @TempDir
    private Path folder;

    static Stream<StoreAddress> stores() {
        return Stores.both();
    }

    private static JobCard card() {
        JobCard.Read read = JobCard.of(JobText.read(HOLES).with(Map.of("name", "Bearing block", "drive", "mill")));
        return ((JobCard.Good) read).card();
    }

    private static JobNumber fill(Store store) {
        Crib crib = new Crib(store);
        for (String[] tap : new String[][] {{"T-8", "M8x1.25"}, {"T-8B", "M8x1.25-6H"}, {"T-25", "1/4-20 UNC"}}) {
            Map<String, String> card =
                    ItemForms.lasting(ItemKind.TAP, Map.of("thread", tap[1])).orThrow();
            crib.add(new Item(new Mark(tap[0]), ItemKind.TAP, "", card)).orThrow();
        }
        return new Jobs(store).add(card(), new KeptJob.Made(NOW, "Ida"));
    }

    private static Answer<KeptJob> done(
            Store store, JobNumber job, int line, String tap, @Nullable Integer count, String ticket) {
        return new Jobs(store).done(new Done(new Done.Place(job, line), new Mark(tap), count, IDA, ticket));
    }

    private static JobState state(Store store, JobNumber job) {
        return new Jobs(store).find(job).orElseThrow().state();
    }

    private static List<String> why(Answer<KeptJob> refused) {
        return refused.findings().stream().map(Finding::sentence).toList();
    }

    @ParameterizedTest
    @MethodSource("stores")
    void jobsAreNumberedWithACheckCharacterAndBareFiguresKeepTheirUnit(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            JobNumber first = fill(store);
            JobNumber second = new Jobs(store).add(card(), new KeptJob.Made(NOW.plusSeconds(5), "Jon"));
            assertThat(first).isEqualTo(JobNumber.numbered(1));
            assertThat(second).isEqualTo(JobNumber.numbered(2));
            assertThat(state(store, first).card().holes())
                    .extracting(hole -> hole.get("depth"))
                    .containsExactly("16 mm", ".5");
            assertThat(new Jobs(store).list(10))
                    .extracting(job -> job.state().number())
                    .containsExactly(second.text(), first.text());
            assertThat(new Jobs(store).find(JobNumber.numbered(9))).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void aDoneMarkIsAnEventOfTheTapAndTakingItBackCountsTheHolesNoMore(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            JobNumber job = fill(store);
            assertThat(done(store, job, 1, "T-8", 5, "a").orThrow().state().done(1))
                    .isEqualTo(5);
            assertThat(done(store, job, 1, "T-8", 5, "a").orThrow().state().done(1))
                    .as("sent twice, counted once")
                    .isEqualTo(5);
            done(store, job, 1, "T-8B", null, "b").orThrow();
            done(store, job, 2, "T-25", 1, "a").orThrow();
            var tap = new Crib(store).find(new Mark("T-8B")).orElseThrow();
            assertThat(tap.history().standing().uses().holes()).isEqualTo(7);
            assertThat(tap.events().get(0).fields())
                    .isEqualTo(Map.of("holes", "7", "material", "C45", "depth", "16 mm", "note", job + " line 1"));
            assertThat(state(store, job).holesDone()).isEqualTo(13);

            new Jobs(store).takeBack(new Done.Place(job, 1), "wrong tap", IDA).orThrow();
            assertThat(state(store, job).done(1)).isEqualTo(5);
            assertThat(new Crib(store)
                            .find(new Mark("T-8B"))
                            .orElseThrow()
                            .history()
                            .standing()
                            .uses()
                            .holes())
                    .isZero();
            assertThat(state(store, job).done()).filteredOn(DoneMark::takenBack).hasSize(1);
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void aCorrectionInTheTapsHistoryIsOneOfTheJob(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            JobNumber job = fill(store);
            done(store, job, 1, "T-8", 5, "a").orThrow();
            Told told = Told.read(EventKind.CORRECTED, Map.of("takes-back", "1", "because", "no"), UnitSystem.METRIC)
                    .orThrow();
            new Crib(store)
                    .log(new Saying(new Mark("T-8"), told, IDA, null, null))
                    .orThrow();
            assertThat(state(store, job).done(1)).isZero();
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void whatCannotBeIsRefusedAndNothingOfItIsKept(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            JobNumber job = fill(store);
            assertThat(why(done(store, job, 1, "T-25", 1, "x")))
                    .containsExactly(
                            "tap: \"T-25\" is a tap 1/4-20 UNC, and line 1 is M8x1.25-6H. To mend: read the mark"
                                    + " and the line again.");
            assertThat(why(done(store, job, 1, "T-8", 13, "x")))
                    .containsExactly(
                            "count: \"13\" is more than the 12 that are left of line 1. To mend: write 12, and log"
                                    + " other holes with landfall crib log.");
            assertThat(why(done(store, job, 3, "NOBODY", 1, "x")))
                    .containsExactly(
                            "line: \"3\" is not a line of " + job + ". To mend: write a number from 1 to 2.",
                            "mark: \"NOBODY\" is not in the crib. To mend: look with landfall crib list, or add it with"
                                    + " crib add.");
            assertThat(why(done(store, JobNumber.numbered(5), 1, "T-8", 1, "x")).get(0))
                    .contains("is not the number of a job here");
            assertThat(why(new Jobs(store).takeBack(new Done.Place(job, 2), "no", IDA))
                            .get(0))
                    .contains("has no mark that could be taken back");
            assertThat(state(store, job).done()).isEmpty();
            assertThat(new Crib(store).find(new Mark("T-8")).orElseThrow().events())
                    .isEmpty();
            done(store, job, 2, "T-25", 4, "y").orThrow();
            assertThat(why(done(store, job, 2, "T-25", 1, "z")).get(0)).contains("is done: all 4 holes are marked");
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void aBackupTakesJobsAlongAndRestoresToTheSameDigestInEitherKindOfStore(StoreAddress address) {
        Path file = folder.resolve("crib.backup");
        try (Store store = Stores.open(address)) {
            JobNumber job = fill(store);
            done(store, job, 1, "T-8", 5, "a").orThrow();
            new Jobs(store).takeBack(new Done.Place(job, 1), "wrong tap", IDA).orThrow();
            done(store, job, 1, "T-8B", 3, "b").orThrow();
            var written = Backup.write(store, file, NOW);
            assertThat(written.jobs()).isEqualTo(1);
            assertThat(Backup.proves(file, written, Stores.CLOCK)).isTrue();
            Stores.both().forEach(target -> {
                try (Store other = Stores.open(target)) {
                    assertThat(Backup.restore(other, file).orThrow()).isEqualTo(written);
                    assertThat(Backup.content(other)).isEqualTo(written);
                    assertThat(state(other, job)).isEqualTo(state(store, job));
                    assertThat(new Jobs(other).add(card(), new KeptJob.Made(NOW, "Jon")))
                            .isEqualTo(JobNumber.numbered(2));
                }
            });
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void theTablesOfAnExportReadBackToTheSameDigest(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            JobNumber job = fill(store);
            done(store, job, 1, "T-8", 5, "a").orThrow();
            done(store, job, 2, "T-25", 2, "b").orThrow();
            StringWriter things = new StringWriter();
            StringWriter events = new StringWriter();
            StringWriter jobs = new StringWriter();
            TableOut.things(store, things);
            TableOut.events(store, events);
            assertThat(TableOut.jobs(store, jobs)).isEqualTo(5);
            try (Store other = Stores.open(Stores.newFile())) {
                read(other, things.toString());
                read(other, events.toString());
                Report report = read(other, jobs.toString());
                assertThat(report.bad()).isEmpty();
                assertThat(Backup.content(other)).isEqualTo(Backup.content(store));
                assertThat(read(other, jobs.toString()).bad()).isEmpty();
                assertThat(Backup.content(other)).isEqualTo(Backup.content(store));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void anExportInJsonReadsBackToTheSameDigestInEitherKindOfStore(StoreAddress address) throws IOException {
        Path file = folder.resolve("crib.json");
        try (Store store = Stores.open(address)) {
            JobNumber job = fill(store);
            done(store, job, 1, "T-8", 5, "a").orThrow();
            new Jobs(store).takeBack(new Done.Place(job, 1), "wrong tap", IDA).orThrow();
            done(store, job, 2, "T-25", 2, "b").orThrow();
            try (BufferedWriter out = Files.newBufferedWriter(file)) {
                assertThat(JsonOut.write(store, out)).isEqualTo(new JsonOut.Counts(3, 1));
            }
            Stores.both().forEach(target -> {
                try (Store other = Stores.open(target)) {
                    assertThat(json(other, file, DRY).orThrow().bad()).isEmpty();
                    assertThat(Backup.content(other).things()).isZero();
                    Report report = json(other, file, KEEP).orThrow();
                    assertThat(report.bad()).isEmpty();
                    assertThat(report.addedRows()).isEqualTo(3 + 3 + 5);
                    assertThat(Backup.content(other)).isEqualTo(Backup.content(store));
                    assertThat(json(other, file, KEEP).orThrow().unchangedRows())
                            .isEqualTo(3 + 3 + 5);
                    assertThat(Backup.content(other)).as("read twice").isEqualTo(Backup.content(store));
                }
            });
        }
    }

    @Test
    void whatIsAmissInAnExportIsToldWithItsLineAndTheRestIsKept() throws IOException {
        Path file = folder.resolve("crib.json");
        Files.writeString(file, """
                {"landfall":1,"things":[
                {"mark":"T-1","kind":"tap","card":{"thread":"M8x1.25-6H","flute":{"count":"4"}},"events":[]},
                {"mark":"T-2","kind":"tap","card":{"thread":"M8x1.25-6H"},"events":[
                {"at":"2026-11-25T08:00:00Z","kind":"tapped","by":"Ida","fields":{"holes":"two"}},
                {"at":"2026-11-25T08:00:00Z","kind":"tapped","by":"Ida","fields":{"holes":"4"},"ticket":"x"}]}
                ],"more":{"a":[1]}}
                """);
        try (Store store = Stores.open(Stores.newFile())) {
            Report none = json(store, file, new Wish.How(false, true, false)).orThrow();
            assertThat(none.isKept()).isFalse();
            assertThat(Backup.content(store).things()).isZero();
            Report report = json(store, file, KEEP).orThrow();
            assertThat(report.bad())
                    .extracting(bad -> bad.line() + " " + bad.finding().field())
                    .containsExactly("2 flute.count", "3 holes");
            assertThat(Backup.content(store).events()).isEqualTo(1);
            Files.writeString(file, "{\"landfall\":1,\"things\":[\n{\"mark\":\"T-3\",");
            assertThat(json(store, file, KEEP).findings().get(0).sentence()).contains("is not JSON in line 2");
            Files.writeString(file, "{\"taps\":[]}");
            assertThat(json(store, file, KEEP).findings().get(0).why()).isEqualTo("holds no things of a crib");
            assertThat(Backup.content(store).things()).isEqualTo(1);
        }
    }

    private static Answer<Report> json(Store store, Path file, Wish.How how) {
        Wish wish = new Wish(Map.of(), how, "Ida", ZonedDateTime.parse("2026-11-25T08:00:00Z"));
        try {
            return TableIn.json(store, file, wish, TableIn.Watch.NOBODY);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void badRowsOfATableOfJobsAreToldWithTheirLines(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            String number = JobNumber.numbered(1).text();
            Report report = read(store, """
                    job,row,line,at,by,mark,ticket,name,callout,material,depth,kind,count
                    %1$s,job,,yesterday,Ida,,,Block,,,,,
                    %1$s,hole,1,,,,,,M8,C45,16 mm,blind,4
                    J0001-%2$s,job,,2026-11-25T08:00:00Z,Ida,,,Block,,,,,
                    %1$s,job,,2026-11-25T08:00:00Z,Ida,,,Block,,,,,
                    %1$s,hole,1,,,,,,M8,kryptonite,16 mm,blind,4
                    %1$s,hole,2,,,,,,M8,C45,16 mm,blind,4
                    %1$s,done,1,,,T-8,nothing,,,,,,
                    %1$s,pause,1,,,,,,,,,,
                    """.formatted(number, number.endsWith("Z") ? "Y" : "Z"));
            assertThat(report.bad())
                    .extracting(bad -> bad.line() + " " + bad.finding().field())
                    .containsExactly("2 at", "3 job", "4 number", "6 material", "8 ticket", "9 row");
        }
    }

    private static Report read(Store store, String table) {
        Wish wish = new Wish(Map.of(), KEEP, "Ida", ZonedDateTime.parse("2026-11-25T08:00:00Z"));
        return TableIn.read(store, new StringReader(table), wish, TableIn.Watch.NOBODY)
                .orThrow();
    }
}
