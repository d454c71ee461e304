// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import landfall.store.backup.Backup;
import landfall.store.backup.Content;
import landfall.store.crib.Crib;
import landfall.store.crib.Row;
import landfall.store.crib.Wanted;
import landfall.store.people.Password;
import landfall.store.people.People;
import landfall.store.people.Person;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Stores that earlier programs wrote, kept by {@link KeepForm}, are opened by this one and lose nothing. */
class EarlierFormsTest {
    private static final int NEWEST = Integer.parseInt(Migration.NEWEST);

    static IntStream kept() {
        return IntStream.rangeClosed(1, NEWEST).filter(form -> resource(form, "txt") != null);
    }

    @Test
    void everyFormIsKeptThePresentOneToo() {
        assertThat(kept().boxed().toList())
                .isEqualTo(IntStream.rangeClosed(1, NEWEST).boxed().toList());
    }

    @ParameterizedTest
    @MethodSource("kept")
    void aFileOfAnEarlierFormIsCopiedThenBroughtOnAndHoldsTheSame(int form) throws IOException {
        StoreAddress.InFile address = Stores.newFile();
        byte[] old = bytes(form, "db");
        Files.write(address.path(), old);
        try (Store store = Stores.open(address)) {
            assertThat(Backup.content(store)).isEqualTo(content(form));
            theListIsAsTheHistories(store);
            whoWasLetInStillIs(form, store);
        }
        List<Path> copies;
        try (Stream<Path> beside =
                Files.list(Objects.requireNonNull(address.path().getParent()))) {
            copies = beside.filter(path -> path.toString().endsWith(".copy")).toList();
        }
        if (form == NEWEST) {
            assertThat(copies).isEmpty();
            return;
        }
        assertThat(copies).hasSize(1);
        assertThat(copies.get(0).getFileName().toString()).startsWith("crib.db.form-" + form + ".");
        try (Store copy = Stores.open(new StoreAddress.InFile(copies.get(0)))) {
            assertThat(Backup.content(copy)).isEqualTo(content(form));
        }
    }

    @ParameterizedTest
    @MethodSource("kept")
    void aDatabaseOfAnEarlierFormIsBroughtOnAndHoldsTheSame(int form) throws IOException, SQLException {
        StoreAddress.OnServer address = PostgresServer.newBase();
        try (Connection connection = DriverManager.getConnection(address.jdbc(), "shop", "")) {
            connection.createStatement().execute(new String(bytes(form, "sql"), StandardCharsets.UTF_8));
        }
        try (Store store = Stores.open(address)) {
            assertThat(Backup.content(store)).isEqualTo(content(form));
            theListIsAsTheHistories(store);
            whoWasLetInStillIs(form, store);
        }
    }

    private static void whoWasLetInStillIs(int form, Store store) throws IOException {
        People people = new People(store, Stores.CLOCK);
        assertThat(people.list()).hasSize((int) content(form).people());
        for (Person person : people.list()) {
            assertThat(people.enter(Optional.of(person.name()), new Password("fifteen signs at least")))
                    .contains(person);
        }
    }

    private static void theListIsAsTheHistories(Store store) {
        Crib crib = new Crib(store);
        List<Row> rows = crib.list(Wanted.all());
        assertThat(rows).hasSizeGreaterThan(5);
        for (Row row : rows) {
            var standing = crib.find(row.item().mark()).orElseThrow().history().standing();
            assertThat(row.status()).isEqualTo(standing.status());
            assertThat(row.place()).isEqualTo(standing.place());
            assertThat(row.counts().holes()).isEqualTo(standing.uses().holes());
            assertThat(row.counts().sinceSharp()).isEqualTo(standing.uses().sinceSharp());
            assertThat(row.seen().lastSeq()).isEqualTo(standing.last().seq());
        }
    }

    private static Content content(int form) throws IOException {
        Properties told = new Properties();
        try (InputStream in = Objects.requireNonNull(resource(form, "txt"))) {
            told.load(in);
        }
        return new Content(
                Long.parseLong(told.getProperty("things")),
                Long.parseLong(told.getProperty("events")),
                Long.parseLong(told.getProperty("jobs", "0")),
                Long.parseLong(told.getProperty("people", "0")),
                told.getProperty("sha256"));
    }

    private static byte[] bytes(int form, String end) throws IOException {
        try (InputStream in = Objects.requireNonNull(resource(form, end))) {
            return in.readAllBytes();
        }
    }

    private static @Nullable InputStream resource(int form, String end) {
        return EarlierFormsTest.class.getResourceAsStream("/forms/form-" + form + "." + end);
    }
}
