// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Whole sheets that a person has looked at. A sheet that has changed is written beside the build, to be looked at and,
 * when it is right, copied over the golden one.
 */
final class Golden {
    private static final Path GOLDEN = Path.of("src/test/resources/golden");
    private static final Path ACTUAL = Path.of("target/golden");

    private Golden() {}

    static void write(String name, String actual) throws IOException {
        Files.createDirectories(ACTUAL);
        Files.writeString(ACTUAL.resolve(name), actual);
    }

    static void holds(String name) throws IOException {
        String actual = Files.readString(ACTUAL.resolve(name), StandardCharsets.UTF_8);
        Path golden = GOLDEN.resolve(name);
        String expected = Files.exists(golden) ? Files.readString(golden, StandardCharsets.UTF_8) : "";
        assertThat(actual)
                .as("look at sheets/target/golden/%s; when it is right, copy it to src/test/resources/golden", name)
                .isEqualTo(expected);
    }
}
