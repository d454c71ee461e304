// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.Told;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.quantity.UnitSystem;
import landfall.store.crib.Crib;
import landfall.store.crib.Item;
import landfall.store.crib.Row;
import landfall.store.crib.Saying;
import landfall.store.crib.Wanted;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A program that writes is killed at any moment; what it had acknowledged is there afterwards. More kills with
 * {@code -Dlandfall.kills=200}.
 */
class KillTest {
    private static final int KILLS = Integer.getInteger("landfall.kills", 10);
    /** What was found, for whoever wants to tell it. */
    private static final Path FOUND = Path.of("target", "kills.txt");

    private static final Mark MARK = new Mark("T-1");

    static Stream<StoreAddress> stores() {
        return Stores.both();
    }

    @ParameterizedTest
    @MethodSource("stores")
    void nothingAcknowledgedIsLost(StoreAddress address) throws Exception {
        Random random = new Random(20261125);
        try (Store store = Stores.open(address)) {
            Map<String, String> card =
                    ItemForms.lasting(ItemKind.TAP, Map.of("thread", "M8x1.25")).orThrow();
            new Crib(store).add(new Item(MARK, ItemKind.TAP, "", card)).orThrow();
        }
        long acknowledged = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            acknowledged = Math.max(acknowledged, writeUntilKilled(address, random.nextInt(250)));
            try (Store store = Stores.open(address)) {
                Row row = new Crib(store).list(Wanted.all()).get(0);
                long there = new Crib(store).find(MARK).orElseThrow().events().size();
                assertThat(there).as("kill %d", kill).isGreaterThanOrEqualTo(acknowledged);
                assertThat(row.seen().lastSeq()).isEqualTo(there);
                assertThat(row.counts().holes()).isEqualTo(there);
                acknowledged = there;
            }
        }
        assertThat(acknowledged).as("events that were acknowledged").isGreaterThan(KILLS);
        Files.createDirectories(FOUND.getParent());
        Files.writeString(
                FOUND,
                "%s: killed %d times; %d events acknowledged, none of them lost, all folded%n"
                        .formatted(
                                address instanceof StoreAddress.InFile ? "SQLite" : "PostgreSQL", KILLS, acknowledged),
                StandardOpenOption.CREATE,
                StandardOpenOption.APPEND);
    }

    /** The number of the last event that the killed program had acknowledged. */
    private static long writeUntilKilled(StoreAddress address, int millis) throws Exception {
        String text = address instanceof StoreAddress.OnServer server
                ? server.words().replace("//", "//shop@")
                : address.words();
        Process writer = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writer.class.getName(),
                        text))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<Long> told = new ArrayList<>();
        Thread listener = new Thread(() -> listen(writer, told, millis));
        listener.start();
        boolean ended = writer.waitFor(60, TimeUnit.SECONDS);
        listener.join();
        assertThat(ended).isTrue();
        return told.isEmpty() ? 0 : told.get(told.size() - 1);
    }

    /** Kills the writer some time after its first word; what was on its way is read too. */
    private static void listen(Process writer, List<Long> told, int millis) {
        try (BufferedReader in =
                new BufferedReader(new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
            long end = 0;
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                told.add(Long.valueOf(line));
                if (end == 0) {
                    end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
                }
                if (writer.isAlive() && System.nanoTime() > end) {
                    writer.destroyForcibly();
                }
            }
        } catch (IOException e) {
            writer.destroyForcibly();
        }
    }

    /** Adds an event after another, and says its number when it is kept. */
    static final class Writer {
        private Writer() {}

        public static void main(String[] args) {
            Told told = Told.read(EventKind.TAPPED, Map.of("holes", "1"), UnitSystem.METRIC)
                    .orThrow();
            try (Store store = Store.open(StoreAddress.read(args[0]).orThrow(), Clock.systemUTC())) {
                Crib crib = new Crib(store);
                while (true) {
                    var kept = crib.log(new Saying(MARK, told, new Saying.Who("Ida", Instant.now()), null, null))
                            .orThrow();
                    System.out.println(kept.seq());
                    System.out.flush();
                }
            }
        }
    }
}
