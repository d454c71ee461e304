// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.jdbi.v3.core.Handle;

/** Brings a store to the form that this program knows; a file is copied beside itself before that. */
final class Migration {
    /** The newest of the scripts in the program. A test holds it to them. */
    static final String NEWEST = "4";

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss").withZone(ZoneOffset.UTC);

    private Migration() {}

    static void bring(Store store, DataSource source, Clock clock) {
        Optional<String> form = store.read(handle -> form(handle, store.isFile()));
        if (form.filter(NEWEST::equals).isPresent()) {
            return;
        }
        if (form.isPresent() && store.address() instanceof StoreAddress.InFile file) {
            copy(store, file.path(), form.get(), clock);
        }
        Flyway flyway = scripts(store.isFile()).dataSource(source).load();
        MigrationInfo current = flyway.info().current();
        if (current != null && newer(current.getVersion().getVersion())) {
            throw new StoreFault(
                    store.address().words(),
                    "was written by a newer landfall (form " + current.getVersion() + ", this one knows " + NEWEST
                            + ")",
                    "use the newer program, or a backup from before",
                    new IllegalStateException("newer form"));
        }
        flyway.migrate();
    }

    static FluentConfiguration scripts(boolean file) {
        return Flyway.configure()
                .locations("classpath:landfall/store/migration")
                .placeholders(Map.of("exact", file ? "" : "collate \"C\""))
                .failOnMissingLocations(true)
                .baselineOnMigrate(false);
    }

    private static boolean newer(String version) {
        return Integer.parseInt(version) > Integer.parseInt(NEWEST);
    }

    /** The form that a store is in; empty for a new one. Asking it costs far less than loading the scripts. */
    private static Optional<String> form(Handle handle, boolean file) {
        String tables = file
                ? "select count(*) from sqlite_master where type = 'table' and name = 'flyway_schema_history'"
                : "select count(*) from information_schema.tables where table_name = 'flyway_schema_history'"
                        + " and table_schema = current_schema()";
        if (handle.createQuery(tables).mapTo(Integer.class).one() == 0) {
            return Optional.empty();
        }
        List<String> versions = handle.createQuery(
                        "select version from flyway_schema_history where success and version is not null"
                                + " order by installed_rank desc")
                .mapTo(String.class)
                .list();
        return versions.stream().findFirst();
    }

    private static void copy(Store store, Path file, String form, Clock clock) {
        Path copy = file.resolveSibling(
                file.getFileName() + ".form-" + form + "." + STAMP.format(clock.instant()) + ".copy");
        store.alone(handle -> handle.execute("vacuum into ?", copy.toString()));
    }
}
