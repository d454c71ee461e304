// SPDX-License-Identifier: Apache-2.0
package landfall.store.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.StringReader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.Stores;
import landfall.store.crib.Crib;
import landfall.store.crib.Wanted;
import landfall.store.people.Password;
import landfall.store.people.People;
import landfall.store.people.Person;
import landfall.store.people.PersonName;
import landfall.store.people.Role;
import landfall.store.people.SignIns;
import landfall.store.table.TableIn;
import landfall.store.table.Wish;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BackupTest {
    private static final Instant NOW = Instant.parse("2026-11-25T08:00:00Z");

    @TempDir
    private Path folder;

    static Stream<StoreAddress> stores() {
        return Stores.both();
    }

    @ParameterizedTest
    @MethodSource("stores")
    void aBackupRestoresToTheSameCribInEitherKindOfStore(StoreAddress address) {
        Path file = folder.resolve("crib.backup");
        try (Store store = Stores.open(address)) {
            fill(store);
            Content written = Backup.write(store, file, NOW);
            assertThat(written.things()).isEqualTo(40);
            assertThat(written).isEqualTo(Backup.content(store));
            assertThat(Backup.proves(file, written, Stores.CLOCK)).isTrue();
            assertThat(Backup.proves(file, new Content(40, 1, 0, 0, written.sha256()), Stores.CLOCK))
                    .isFalse();
            Stores.both().forEach(target -> {
                try (Store other = Stores.open(target)) {
                    assertThat(Backup.restore(other, file).orThrow()).isEqualTo(written);
                    assertThat(Backup.content(other)).isEqualTo(written);
                    assertThat(new Crib(other).list(Wanted.all())).isEqualTo(new Crib(store).list(Wanted.all()));
                }
            });
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void peopleComeBackWithTheirPasswordsAndNobodyIsSignedIn(StoreAddress address) throws IOException {
        Path file = folder.resolve("crib.backup");
        Password password = new Password("fifteen signs at least");
        PersonName ida = new PersonName("ida");
        try (Store store = Stores.open(address)) {
            People people = new People(store, Stores.CLOCK);
            Person keeps = people.add(ida, "Ida Marsh", Role.KEEP, password).orThrow();
            people.add(new PersonName("jon"), "Jon", Role.USE, password).orThrow();
            people.close(new PersonName("jon")).orThrow();
            String token = new SignIns(store, Stores.CLOCK).begin(keeps, Optional.empty());
            Content written = Backup.write(store, file, NOW);
            assertThat(written.people()).isEqualTo(2);
            assertThat(Backup.proves(file, written, Stores.CLOCK)).isTrue();
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo("rw-------");
            Stores.both().forEach(target -> {
                try (Store other = Stores.open(target)) {
                    assertThat(Backup.restore(other, file).orThrow()).isEqualTo(written);
                    assertThat(Backup.content(other)).isEqualTo(written);
                    People restored = new People(other, Stores.CLOCK);
                    assertThat(restored.list()).isEqualTo(people.list());
                    assertThat(restored.enter(Optional.of(ida), password)).contains(keeps);
                    assertThat(restored.enter(Optional.of(new PersonName("jon")), password))
                            .isEmpty();
                    assertThat(new SignIns(other, Stores.CLOCK).find(token)).isEmpty();
                    assertThat(Backup.restore(other, file).findings().get(0).why())
                            .isEqualTo("holds a crib or people already");
                }
            });
        }
    }

    @Test
    void aBackupThatTellsNoHashIsRefusedThoughItsDigestAgrees() throws Exception {
        Path file = folder.resolve("crib.backup");
        String person = "{\"record\":\"person\",\"name\":\"ida\",\"shown\":\"Ida\",\"role\":\"keep\","
                + "\"password\":\"open\",\"active\":true,\"since\":\"2026-11-25T08:00:00Z\"}\n";
        String digest = HexFormat.of()
                .formatHex(MessageDigest.getInstance("SHA-256").digest(person.getBytes(StandardCharsets.UTF_8)));
        try (Writer out =
                new OutputStreamWriter(new GZIPOutputStream(Files.newOutputStream(file)), StandardCharsets.UTF_8)) {
            out.write("{\"record\":\"head\",\"landfall\":\"crib\",\"form\":2}\n" + person
                    + "{\"record\":\"tail\",\"people\":1,\"sha256\":\"" + digest + "\"}\n");
        }
        try (Store other = Stores.open(Stores.newFile())) {
            assertThat(Backup.restore(other, file).findings().get(0).why())
                    .isEqualTo("is no backup of a crib, or is not whole");
        }
    }

    @Test
    void aBackupThatWasCutShortOrChangedIsRefusedAndNothingIsKept() throws IOException {
        Path file = folder.resolve("crib.backup");
        try (Store store = Stores.open(Stores.newFile());
                Store other = Stores.open(Stores.newFile())) {
            fill(store);
            Backup.write(store, file, NOW);
            byte[] whole = Files.readAllBytes(file);
            Random random = new Random(5);
            for (int i = 0; i < 30; i++) {
                byte[] bad = i % 2 == 0 ? Arrays.copyOf(whole, random.nextInt(whole.length)) : whole.clone();
                if (i % 2 == 1) {
                    bad[20 + random.nextInt(whole.length - 40)] ^= 0x10;
                }
                Files.write(file, bad);
                assertThat(Backup.restore(other, file).findings().get(0).why())
                        .isEqualTo("is no backup of a crib, or is not whole");
            }
            assertThat(new Crib(other).list(Wanted.all())).isEmpty();
        }
    }

    @Test
    void aStoreThatHoldsACribIsNotWrittenOver() {
        Path file = folder.resolve("crib.backup");
        try (Store store = Stores.open(Stores.newFile())) {
            fill(store);
            Backup.write(store, file, NOW);
            assertThat(Backup.restore(store, file).findings().get(0).sentence())
                    .endsWith("holds a crib or people already. To mend: restore into a new one: --store NEW.");
        }
    }

    private static void fill(Store store) {
        StringBuilder things = new StringBuilder("mark,thread,place,price\n");
        StringBuilder events = new StringBuilder("mark,event,at,holes,ticket\n");
        for (int i = 0; i < 40; i++) {
            things.append("t-")
                    .append(i)
                    .append(",M8x1.25-6H,drawer ä")
                    .append(i % 7)
                    .append(",18.50\n");
            for (int k = 0; k < i; k++) {
                events.append("t-")
                        .append(i)
                        .append(",tapped,2026-05-01,")
                        .append(k + 1)
                        .append(",x")
                        .append(k)
                        .append('\n');
            }
        }
        Wish wish = new Wish(
                Map.of(), new Wish.How(false, false, false), "Ida", ZonedDateTime.parse("2026-11-25T08:00:00Z"));
        assertThat(TableIn.read(store, new StringReader(things.toString()), wish, TableIn.Watch.NOBODY)
                        .orThrow()
                        .bad())
                .isEmpty();
        assertThat(TableIn.read(store, new StringReader(events.toString()), wish, TableIn.Watch.NOBODY)
                        .orThrow()
                        .bad())
                .isEmpty();
    }
}
