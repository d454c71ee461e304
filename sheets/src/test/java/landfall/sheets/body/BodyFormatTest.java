// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.solid.TapBody;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each file is read back by another program (assimp, Debian's package) and holds the same body. */
@DisplayName("Bodies as files")
class BodyFormatTest {
    @ParameterizedTest
    @EnumSource(BodyFormat.class)
    void anotherReaderFindsTheSameTrianglesInTheSameRoom(BodyFormat format) throws IOException, InterruptedException {
        TapBody body = Bodies.ground();
        Path file = Files.createDirectories(Path.of("target", "bodies")).resolve("tap." + format.ending());
        Files.write(file, bytes(body, format));
        String found = read(file);
        assertThat(number(found, "Faces:\\s+(\\d+)")).isEqualTo(body.mesh().triangles());
        double metre = format == BodyFormat.GLB ? 1000 : 1;
        assertThat(metre * number(found, "Minimum point\\s+\\(\\S+ \\S+ (\\S+)\\)"))
                .isCloseTo(0, within(1e-6));
        assertThat(metre * number(found, "Maximum point\\s+\\(\\S+ \\S+ (\\S+)\\)"))
                .isCloseTo(72, within(1e-3));
        assertThat(metre * number(found, "Maximum point\\s+\\((\\S+) \\S+ \\S+\\)"))
                .isCloseTo(4, within(0.01));
    }

    @ParameterizedTest
    @EnumSource(BodyFormat.class)
    void theSameBodyGivesTheSameBytes(BodyFormat format) throws IOException {
        assertThat(bytes(Bodies.before(), format)).isEqualTo(bytes(Bodies.before(), format));
    }

    @Test
    void aFileNameAsksForItsFormat() {
        assertThat(BodyFormat.of("Tap.STL")).contains(BodyFormat.STL);
        assertThat(BodyFormat.of("a.b.3mf")).contains(BodyFormat.THREE_MF);
        assertThat(BodyFormat.of("tap.glb")).contains(BodyFormat.GLB);
        assertThat(BodyFormat.of("tap.obj")).isEmpty();
    }

    private static byte[] bytes(TapBody body, BodyFormat format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        format.write(body, out);
        return out.toByteArray();
    }

    private static String read(Path file) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(List.of("assimp", "info", file.toString()))
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
        return said;
    }

    private static double number(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as("%s in %s", pattern, text).isTrue();
        return Double.parseDouble(matcher.group(1));
    }
}
