// SPDX-License-Identifier: Apache-2.0
package landfall.house;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The project's files and classes, for the tests that hold the house in order. */
final class House {
    private static final Pattern BUILT = Pattern.compile("(^|/)(target|node_modules|\\.git)(/|$)");

    private static final Path ROOT = findRoot();

    private House() {}

    /** The folder of the whole project: the nearest one above that holds {@code sources.bib}. */
    static Path root() {
        return ROOT;
    }

    private static Path findRoot() {
        Path here = Path.of("").toAbsolutePath();
        for (Path at = here; at != null; at = at.getParent()) {
            if (Files.exists(at.resolve("sources.bib"))) {
                return at;
            }
        }
        throw new IllegalStateException("no folder above " + here + " holds sources.bib");
    }

    /** Files whose path from the root matches, in order; built files never. */
    static List<Path> files(String pathPattern) {
        Pattern wanted = Pattern.compile(pathPattern);
        try (Stream<Path> all = Files.walk(ROOT)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !BUILT.matcher(name(file)).find())
                    .filter(file -> wanted.matcher(name(file)).matches())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file's path from the root, with slashes. */
    static String name(Path file) {
        return ROOT.relativize(file).toString().replace('\\', '/');
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException("not text in UTF-8: " + name(file), e);
        }
    }

    /** {@code path:line} of a place in a file's text. */
    static String place(Path file, String text, int at) {
        return name(file) + ":"
                + (text.substring(0, at).lines().count() + (at == 0 || text.charAt(at - 1) == '\n' ? 1 : 0));
    }

    /** The shipped classes of all modules that {@code app} knows. */
    static JavaClasses classes() {
        return Shipped.CLASSES;
    }

    /** Read once for all tests. */
    private static final class Shipped {
        static final JavaClasses CLASSES = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .withImportOption(Shipped::isNoTestJar)
                .importPackages("landfall");

        private static boolean isNoTestJar(Location place) {
            return !place.contains("-tests.jar");
        }
    }
}
