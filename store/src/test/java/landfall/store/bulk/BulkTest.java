// SPDX-License-Identifier: Apache-2.0
package landfall.store.bulk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.history.Mark;
import landfall.history.Standing;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.Stores;
import landfall.store.backup.Backup;
import landfall.store.backup.Content;
import landfall.store.crib.Crib;
import landfall.store.crib.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A large table goes in by a program with a heap of 64 MB, whatever is broken in it. More rows with
 * {@code -Dlandfall.bulk.rows=10000000}; beside the shell of SQLite with {@code -Dlandfall.bulk.beside=sqlite3}. What
 * was measured is in {@code target/bulk.txt} and is held against nothing.
 */
class BulkTest {
    private static final long ROWS = Long.getLong("landfall.bulk.rows", 200_000);
    private static final String BESIDE = System.getProperty("landfall.bulk.beside", "");
    private static final int TAPS = 5000;

    @TempDir
    private Path folder;

    @Test
    void aLargeTableGoesInWithASmallHeapAndEveryBrokenRowIsToldOnce() throws Exception {
        Path things = folder.resolve("things.csv");
        Path events = folder.resolve("events.csv");
        MadeShop shop = new MadeShop(20261130, TAPS);
        shop.things(things);
        long broken = shop.events(events, ROWS, true);
        Path base = folder.resolve("crib.db");
        List<String> said = imported("-Xmx64m", base, things, events, events);
        assertThat(number(said.get(0), "added")).isEqualTo(TAPS);
        assertThat(number(said.get(1), "rows")).isEqualTo(ROWS);
        assertThat(number(said.get(1), "bad")).isEqualTo(broken).isPositive();
        assertThat(number(said.get(1), "added")).isEqualTo(ROWS - broken);
        assertThat(number(said.get(2), "unchanged")).as("read again").isEqualTo(ROWS - broken);
        assertThat(number(said.get(2), "added")).isZero();
        try (Store store = Stores.open(new StoreAddress.InFile(base))) {
            Content content = Backup.content(store);
            assertThat(content.things()).isEqualTo(TAPS);
            assertThat(content.events()).isEqualTo(ROWS - broken);
            foldsHold(new Crib(store));
        }
        List<String> told = new ArrayList<>(List.of("import (-Xmx64m): " + said.get(1)));
        if (!BESIDE.isEmpty()) {
            Path sound = folder.resolve("sound.csv");
            new MadeShop(20261130, TAPS).events(sound, ROWS, false);
            told.addAll(beside(things, sound));
        }
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target", "bulk.txt"), told);
    }

    private static void foldsHold(Crib crib) {
        for (int tap = 0; tap < TAPS; tap += 97) {
            Mark mark = new Mark(MadeShop.mark(tap));
            Standing standing = crib.look(mark, Window.newest(1)).orElseThrow().standing();
            assertThat(standing)
                    .isEqualTo(crib.find(mark).orElseThrow().history().standing());
        }
    }

    private List<String> imported(String heap, Path base, Path... tables) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                heap,
                "-cp",
                System.getProperty("java.class.path"),
                BulkImport.class.getName(),
                base.toString()));
        for (Path table : tables) {
            command.add(table.toString());
        }
        return run(command);
    }

    /**
     * A file without broken rows, which the shell would not survive, by this program and by the shell of SQLite into a
     * table of the same columns with the same kinds of indexes; both must then hold the same.
     */
    private List<String> beside(Path things, Path events) throws Exception {
        Path ourBase = folder.resolve("ours.db");
        String ours = imported("-Xmx1g", ourBase, things, events).get(1);
        Path script = folder.resolve("beside.sql");
        Path base = folder.resolve("beside.db");
        String columns;
        try (var lines = Files.lines(events)) {
            columns = lines.findFirst()
                    .orElseThrow()
                    .replace("-", "_")
                    .replace(",to", ",given_to")
                    .replace("by", "by_whom");
        }
        Files.writeString(
                script,
                "pragma journal_mode = wal;\npragma synchronous = full;\n"
                        + "create table event (" + columns.replace(",", " text, ")
                        + " text, primary key (mark, at, ticket));\n"
                        + "create unique index event_ticket on event (mark, ticket);\n"
                        + "create index event_correction on event (mark) where event = 'corrected';\n"
                        + ".import --csv --skip 1 " + events + " event\nselect count(*) from event;\n");
        long begin = System.nanoTime();
        List<String> said = run(List.of("sh", "-c", BESIDE + " " + base + " < " + script));
        double seconds = (System.nanoTime() - begin) / 1e9;
        long rows = Long.parseLong(said.get(said.size() - 1));
        assertThat(rows).isEqualTo(number(ours, "added")).isEqualTo(ROWS);
        String digest = digest(ourBase, "kind, coalesce(json_extract(fields, '$.holes'), '')");
        assertThat(digest).isEqualTo(digest(base, "event, holes"));
        return List.of(
                "without broken rows (-Xmx1g): " + ours,
                String.format(Locale.ROOT, "%s .import: seconds=%.2f rows=%d", BESIDE, seconds, rows),
                String.format(
                        Locale.ROOT,
                        "speed over that of %s: %.2f; both hold the same: %s",
                        BESIDE,
                        number(ours, "rows") / decimal(ours, "seconds") / (rows / seconds),
                        digest));
    }

    private static String digest(Path base, String columns) throws Exception {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + base);
                ResultSet rows = connection
                        .createStatement()
                        .executeQuery("select mark, ticket, " + columns + " from event order by mark, ticket")) {
            while (rows.next()) {
                for (int i = 1; i <= 4; i++) {
                    digest.update((rows.getString(i) + "\n").getBytes(StandardCharsets.UTF_8));
                }
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private List<String> run(List<String> command) throws IOException, InterruptedException {
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .redirectOutput(said.toFile())
                .start();
        int code = process.waitFor();
        assertThat(code).as("exit of %s", command.get(0)).isZero();
        return Files.readAllLines(said, StandardCharsets.UTF_8);
    }

    private static long number(String line, String name) {
        return (long) decimal(line, name);
    }

    private static double decimal(String line, String name) {
        Matcher matcher = Pattern.compile("\\b" + name + "=([0-9.]+)").matcher(line);
        assertThat(matcher.find()).as("%s in %s", name, line).isTrue();
        return Double.parseDouble(matcher.group(1));
    }
}
