// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BodyOptionTest {
    private static final String TAP = "../examples/tap-m8.json";
    private static final String FIXTURE = "../examples/fixture-three-lobes.json";

    @TempDir
    Path folder;

    @Test
    void bodiesAreWrittenBeforeAndAfterTheGrindAndSaidSo() {
        String after = folder.resolve("after.glb").toString();
        String before = folder.resolve("before.stl").toString();
        Run run = Run.of("grind", TAP, "--fixture", FIXTURE, "--body", after, "--body-before", before, "--json");
        assertThat(run.exit()).isEqualTo(Exit.DONE);
        assertThat(run.err()).contains(after).contains(before).contains("triangles, within 0.030 mm");
        assertThat(Path.of(after)).isNotEmptyFile();
        assertThat(Path.of(before)).isNotEmptyFile();
    }

    @Test
    void aFileOfAnotherFormatIsRefused() {
        Run run = Run.of("grind", TAP, "--fixture", FIXTURE, "--body", "tap.obj");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err())
                .contains("--body: \"tap.obj\" must end with .stl, .3mf or .glb. To mend: end the file's name with the"
                        + " format that the other program reads.");
        assertThat(Files.exists(Path.of("tap.obj"))).isFalse();
    }
}
