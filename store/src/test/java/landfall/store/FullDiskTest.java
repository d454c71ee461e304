// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.Told;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.quantity.UnitSystem;
import landfall.store.crib.Crib;
import landfall.store.crib.Item;
import landfall.store.crib.Saying;
import landfall.store.crib.Wanted;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A real file system of two megabytes, which only root can mount; elsewhere this is not run, and says so. */
class FullDiskTest {
    private static final Mark MARK = new Mark("T-1");
    private Path disk = Path.of("");
    private boolean mounted;

    @BeforeEach
    void aSmallDisk() throws Exception {
        disk = Files.createTempDirectory("small-disk");
        mounted = run("mount", "-t", "tmpfs", "-o", "size=4m", "tmpfs", disk.toString()) == 0;
        assumeThat(mounted).as("a small disk can be mounted here").isTrue();
    }

    @AfterEach
    void away() throws Exception {
        if (mounted) {
            run("umount", disk.toString());
        }
        Files.deleteIfExists(disk);
    }

    @Test
    void aFullDiskIsToldAndNothingAcknowledgedIsLost() throws Exception {
        StoreAddress address = new StoreAddress.InFile(disk.resolve("crib.db"));
        Map<String, String> note = Map.of("holes", "1", "note", "x".repeat(2000));
        Told told = Told.read(EventKind.TAPPED, note, UnitSystem.METRIC).orThrow();
        long[] kept = new long[1];
        try (Store store = Stores.open(address)) {
            Crib crib = new Crib(store);
            Map<String, String> card =
                    ItemForms.lasting(ItemKind.TAP, Map.of("thread", "M8x1.25")).orThrow();
            crib.add(new Item(MARK, ItemKind.TAP, "", card)).orThrow();
            assertThatThrownBy(() -> {
                        while (true) {
                            crib.log(new Saying(MARK, told, new Saying.Who("Ida", Instant.EPOCH), null, null))
                                    .orThrow();
                            kept[0]++;
                        }
                    })
                    .isInstanceOf(StoreFault.class)
                    .hasMessageContaining("is on a disk that is full; nothing of this was kept")
                    .hasMessageContaining("To mend: make room and do it again");
        }
        assertThat(kept[0]).isGreaterThan(50);
        try (Store store = Stores.open(address)) {
            Crib crib = new Crib(store);
            assertThat(crib.find(MARK).orElseThrow().events()).hasSize((int) kept[0]);
            assertThat(crib.list(Wanted.all()).get(0).counts().holes()).isEqualTo(kept[0]);
        }
    }

    private static int run(String... command) throws Exception {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        process.getInputStream().readAllBytes();
        return process.waitFor(20, TimeUnit.SECONDS) ? process.exitValue() : -1;
    }
}
