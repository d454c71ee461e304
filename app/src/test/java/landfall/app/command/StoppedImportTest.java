// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.util.List;
import java.util.concurrent.TimeUnit;
import landfall.app.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C while a table is read: a real program, a real signal. */
class StoppedImportTest {
    private static final int ROWS = 600_000;
    /** What a shell calls a program that an interrupt ended: 128 and the number of the signal. */
    private static final int INTERRUPTED = 130;

    @TempDir
    private Path folder;

    @Test
    void whatWasReadIsKeptAndToldTheRestIsNotAndTheSameTableGoesOn() throws Exception {
        String store = folder.resolve("crib.db").toString();
        assertThat(Run.of("crib", "add", "M8x1.25-6H", "--mark", "T-1", "--store", store)
                        .exit())
                .isEqualTo(Exit.DONE);
        Path table = folder.resolve("events.csv");
        StringBuilder rows = new StringBuilder("mark,event,at,holes,ticket\n");
        for (int i = 0; i < ROWS; i++) {
            rows.append("T-1,tapped,2026-05-01,1,").append(i).append('\n');
        }
        Files.writeString(table, rows);
        Path said = folder.resolve("said.json");
        Process program = importing(table, store, said);
        interruptAtItsFirstWord(program);
        assertThat(program.waitFor(100, TimeUnit.SECONDS)).isTrue();
        assertThat(program.exitValue()).isEqualTo(INTERRUPTED);

        JsonNode told = new ObjectMapper().readTree(said.toFile());
        long added = told.path("added").asLong();
        assertThat(added).isPositive().isLessThan(ROWS);
        assertThat(told.path("kept").asBoolean()).isTrue();
        assertThat(told.path("stoppedIn").asLong()).isEqualTo(added + 1);
        assertThat(kept(store)).containsExactly(added, added - 1, added);
        JsonNode shown = new ObjectMapper()
                .readTree(Run.of("crib", "show", "T-1", "--json", "--store", store)
                        .out());
        assertThat(shown.path("uses").path("holes").asLong()).isEqualTo(added);
    }

    private static Process importing(Path table, String store, Path said) throws IOException {
        return new ProcessBuilder(List.of(
                        // what runs in the background of a shell ignores the signal, and so do its children
                        "env",
                        "--default-signal=INT",
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "crib",
                        "import",
                        table.toString(),
                        "--store",
                        store,
                        "--json"))
                .redirectOutput(said.toFile())
                .start();
    }

    /** The last number, the last ticket and the count of the events; all of them are the first of the table. */
    private static List<Long> kept(String store) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + store);
                ResultSet rows = connection
                        .createStatement()
                        .executeQuery("select max(seq), max(cast(ticket as integer)), count(*) from event")) {
            rows.next();
            return List.of(rows.getLong(1), rows.getLong(2), rows.getLong(3));
        }
    }

    private static void interruptAtItsFirstWord(Process program) throws InterruptedException {
        Thread listener = new Thread(() -> {
            try (BufferedReader err =
                    new BufferedReader(new InputStreamReader(program.getErrorStream(), StandardCharsets.UTF_8))) {
                boolean sent = false;
                for (String line = err.readLine(); line != null; line = err.readLine()) {
                    if (!sent && line.contains("rows read")) {
                        sent = true;
                        new ProcessBuilder("kill", "-INT", String.valueOf(program.pid())).start();
                    }
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        listener.start();
        listener.join(100_000);
    }
}
