// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.Told;
import landfall.cards.job.JobCard;
import landfall.cards.job.JobText;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.history.JobNumber;
import landfall.history.Mark;
import landfall.store.backup.Backup;
import landfall.store.backup.Content;
import landfall.store.crib.Crib;
import landfall.store.crib.Item;
import landfall.store.crib.Saying;
import landfall.store.job.Done;
import landfall.store.job.Jobs;
import landfall.store.job.KeptJob;
import landfall.store.people.PeopleScan;
import org.jdbi.v3.core.Jdbi;
import org.postgresql.ds.PGSimpleDataSource;
import org.sqlite.SQLiteDataSource;

/**
 * Keeps a store as the present program writes it, of both kinds, for later programs to be tried on: {@code form-N.db},
 * {@code form-N.sql} and what they hold, {@code form-N.txt}. Run it before a migration is added; the argument is the
 * folder {@code store/src/test/resources/forms}. With a second argument, a form that no program ever wrote by itself:
 * the kept store of form 1, brought to that form by the scripts up to it, with a person in it.
 */
final class KeepForm {
    private static final Instant BEGIN = Instant.parse("2026-03-02T07:00:00Z");
    private static final Saying.Who IDA = new Saying.Who("Ida", BEGIN.plus(Duration.ofDays(90)));

    /** Of the password {@code fifteen signs at least}; made once, so that both kinds of store hold the same. */
    private static final String HASH =
            "$argon2id$v=19$m=19456,t=2,p=1$xreactzWjbUbkXdWcQjr8g$44QY2A+x0WqnWaQy5t6TBeWQVWYc1+NGrm6cNMPuBWE";

    private final Random random = new Random(20261130);
    private final Store store;
    private final Crib crib;
    private int said;

    private KeepForm(Store store) {
        this.store = store;
        this.crib = new Crib(store);
    }

    public static void main(String[] args) throws IOException, SQLException {
        Path folder = Path.of(args[0]);
        if (args.length > 1) {
            between(folder, args[1]);
            return;
        }
        StoreAddress.InFile file = Stores.newFile();
        Content content = fill(file);
        StoreAddress.OnServer server = PostgresServer.newBase();
        if (!fill(server).equals(content)) {
            throw new IllegalStateException("the two stores differ");
        }
        keep(folder, Migration.NEWEST, file, server, content);
    }

    private static void between(Path folder, String form) throws IOException, SQLException {
        StoreAddress.InFile file = Stores.newFile();
        Files.copy(folder.resolve("form-1.db"), file.path());
        SQLiteDataSource sqlite = new SQLiteDataSource();
        sqlite.setUrl("jdbc:sqlite:" + file.path());
        StoreAddress.OnServer server = PostgresServer.newBase();
        PGSimpleDataSource postgres = new PGSimpleDataSource();
        postgres.setUrl(server.jdbc());
        postgres.setUser("shop");
        try (Connection connection = DriverManager.getConnection(server.jdbc(), "shop", "")) {
            connection.createStatement().execute(Files.readString(folder.resolve("form-1.sql")));
        }
        bring(sqlite, true, form);
        bring(postgres, false, form);
        StoreAddress.InFile copy = Stores.newFile();
        Files.copy(file.path(), copy.path());
        try (Store store = Stores.open(copy)) {
            keep(folder, form, file, server, Backup.content(store));
        }
    }

    private static void bring(DataSource source, boolean file, String form) {
        Migration.scripts(file).dataSource(source).target(form).load().migrate();
        Jdbi.create(source).useHandle(handle -> PeopleScan.put(handle, ida()));
    }

    private static PeopleScan.Held ida() {
        return PeopleScan.read(new PeopleScan.Words("ida", "Ida Marsh", "keep"), true, BEGIN, HASH)
                .orElseThrow();
    }

    private static void keep(
            Path folder, String form, StoreAddress.InFile file, StoreAddress.OnServer server, Content content)
            throws IOException {
        String name = "form-" + form;
        Files.copy(file.path(), folder.resolve(name + ".db"));
        String script = PostgresServer.script(server)
                .lines()
                .filter(line -> !line.startsWith("\\") && !line.startsWith("--") && !line.isBlank())
                .filter(line -> !line.startsWith("SET ") || line.contains("search_path"))
                .collect(Collectors.joining("\n", "", "\n"));
        Files.writeString(folder.resolve(name + ".sql"), script);
        Files.writeString(
                folder.resolve(name + ".txt"),
                "things=%d%nevents=%d%njobs=%d%npeople=%d%nsha256=%s%n"
                        .formatted(
                                content.things(),
                                content.events(),
                                content.jobs(),
                                content.people(),
                                content.sha256()));
    }

    private static Content fill(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            KeepForm form = new KeepForm(store);
            form.fill();
            form.job();
            store.write(handle -> {
                PeopleScan.put(handle, ida());
                return handle;
            });
            return Backup.content(store);
        }
    }

    /** A job with a mark that counts, and one that was taken back. */
    private void job() {
        JobCard.Read read =
                JobCard.of(JobText.read("callout,material,depth,kind,count\nM8x1.25-6H,C45,16 mm,blind,12\n")
                        .with(Map.of("name", "Bearing block", "drive", "mill")));
        JobCard card = ((JobCard.Good) read).card();
        Jobs jobs = new Jobs(store);
        JobNumber number = jobs.add(card, new KeptJob.Made(BEGIN, "Ida"));
        Done.Place place = new Done.Place(number, 1);
        jobs.done(new Done(place, new Mark("SET-A.1"), 5, IDA, "done 1")).orThrow();
        jobs.done(new Done(place, new Mark("SET-A.2"), 3, IDA, "done 2")).orThrow();
        jobs.takeBack(place, "wrong tap", IDA).orThrow();
    }

    private void fill() {
        List<Mark> taps = new ArrayList<>();
        for (String mark : List.of("T-1", "T-2", "SET-A.1", "SET-A.2", "SET-A.3")) {
            taps.add(add(mark, ItemKind.TAP, mark.startsWith("SET") ? "SET-A" : "", Map.of("thread", "M8x1.25-6H")));
        }
        taps.add(crib.addNumbered(
                        ItemKind.TAP,
                        "",
                        card(
                                ItemKind.TAP,
                                Map.of("thread", "1/4-20 UNC-2B", "flutes.count", "3", "flutes.kind", "straight")))
                .mark());
        taps.forEach(this::life);
        say(taps.get(0), EventKind.TAPPED, Map.of("holes", "4000", "material", "1045"));
        say(
                taps.get(0),
                EventKind.CORRECTED,
                Map.of("takes-back", String.valueOf(said(taps.get(0))), "because", "400"));
        say(taps.get(1), EventKind.BROKEN, Map.of("when", "reversal", "part-lost", "yes"));
        Mark gauge = add("G-1", ItemKind.GAUGE, "", Map.of("gauge", "GO plug", "thread", "M8x1.25-6H"));
        say(gauge, EventKind.CALIBRATED, Map.of("passed", "yes", "due", "2027-03-01"));
        Mark wheel = add(
                "W-1",
                ItemKind.WHEEL,
                "",
                Map.of("wheel.diameter", "150 mm", "wheel.marking", "A80J6V", "wheel.markedSpeed", "4000 rev/min"));
        say(wheel, EventKind.MOVED, Map.of("place", "“grinder” drawer, left – ½ full"));
        Mark drill = add("D-1", ItemKind.DRILL, "", Map.of("name", "for M8", "diameter", "6.8 mm"));
        say(drill, EventKind.SHARPENED, Map.of("way", "face"));
        say(drill, EventKind.SCRAPPED, Map.of("because", "too short"));
    }

    private Mark add(String mark, ItemKind kind, String set, Map<String, String> fields) {
        return crib.add(new Item(new Mark(mark), kind, set, card(kind, fields)))
                .orThrow()
                .mark();
    }

    private static Map<String, String> card(ItemKind kind, Map<String, String> fields) {
        return ItemForms.lasting(kind, new TreeMap<>(fields)).orThrow();
    }

    /** Three runs of a tap with signs of every kind; what was felt at the machine is told a day late now and then. */
    private void life(Mark tap) {
        say(tap, EventKind.BOUGHT, Map.of("price", "18.50 EUR", "supplier", "catalogue 4711"));
        for (int run = 0; run < 3; run++) {
            say(tap, EventKind.ISSUED, Map.of("to", "bench " + random.nextInt(4)));
            for (int job = 0; job < 5; job++) {
                Map<String, String> fields = new TreeMap<>(Map.of("holes", String.valueOf(1 + random.nextInt(60))));
                if (random.nextInt(4) > 0) {
                    fields.put("material", "1045");
                    fields.put("depth", "16 mm");
                }
                if (random.nextInt(4) == 0) {
                    fields.put("feel", List.of("fresh", "heavier", "heavy").get(random.nextInt(3)));
                }
                if (random.nextInt(5) == 0) {
                    fields.put("torque", 4 + random.nextInt(5) + " N·m");
                }
                if (random.nextInt(6) == 0) {
                    fields.put("since", "Monday");
                }
                say(tap, EventKind.TAPPED, fields);
            }
            say(tap, EventKind.MEASURED, Map.of("wear-land", "0.%02d mm".formatted(8 + random.nextInt(20))));
            say(tap, EventKind.RETURNED, Map.of("place", "drawer 3"));
            if (run < 2) {
                say(tap, EventKind.SHARPENED, Map.of("way", "chamfer", "stock", "0.3 mm", "wheel", "W-1"));
                say(tap, EventKind.INSPECTED, Map.of("passed", "yes", "note", "tooth 2 stands 0.01 high"));
            }
        }
    }

    private long said(Mark mark) {
        return crib.find(mark).orElseThrow().history().standing().last().seq();
    }

    private void say(Mark mark, EventKind kind, Map<String, String> fields) {
        Item item = crib.find(mark).orElseThrow().item();
        Told told = Told.read(kind, fields, item.bare()).orThrow();
        boolean late = random.nextInt(9) == 0;
        Instant at = BEGIN.plus(Duration.ofHours(said++ * 5L - (late ? 30 : 0)));
        crib.log(new Saying(mark, told, new Saying.Who("Ida", at), said % 7 == 0 ? "r" + said : null, null))
                .orThrow();
    }
}
