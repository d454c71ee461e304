// SPDX-License-Identifier: Apache-2.0
package landfall.app.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import landfall.store.StoreAddress;

/**
 * Where a person's own data lie: {@code $LANDFALL_HOME}, else the folder that the system keeps for a user's data. Never
 * the folder of the program.
 */
public record DataFolder(Path path) {
    public static final String VARIABLE = "LANDFALL_HOME";

    /** The folder of the present user. It is not made by asking for it. */
    public static DataFolder ofThisUser() {
        return of(System.getenv(), System.getProperty("os.name", ""), Path.of(System.getProperty("user.home", ".")));
    }

    static DataFolder of(Map<String, String> environment, String system, Path home) {
        Function<String, Path> at = name -> {
            String value = environment.getOrDefault(name, "");
            return value.isBlank() ? Path.of("") : Path.of(value);
        };
        Path own = at.apply(VARIABLE);
        if (!own.toString().isEmpty()) {
            return new DataFolder(own.toAbsolutePath().normalize());
        }
        String kind = system.toLowerCase(Locale.ROOT);
        if (kind.contains("win")) {
            return new DataFolder(
                    or(at.apply("LOCALAPPDATA"), home.resolve("AppData/Local")).resolve("Landfall"));
        }
        if (kind.contains("mac")) {
            return new DataFolder(home.resolve("Library/Application Support/Landfall"));
        }
        // The base-directory rule says that a path which is not absolute is to be ignored.
        Path data = at.apply("XDG_DATA_HOME");
        return new DataFolder((data.isAbsolute() ? data : home.resolve(".local/share")).resolve("landfall"));
    }

    private static Path or(Path wanted, Path otherwise) {
        return wanted.toString().isEmpty() ? otherwise : wanted;
    }

    /** The file that holds this user's crib when no other store was named. */
    public StoreAddress.InFile crib() {
        return new StoreAddress.InFile(path.resolve("crib.db"));
    }

    /** The folder, or one inside it, made when it is not there. */
    public Path made(String inside) throws IOException {
        return Files.createDirectories(path.resolve(inside));
    }
}
