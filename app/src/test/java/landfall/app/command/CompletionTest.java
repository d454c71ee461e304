// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The script is read by bash itself, which then completes as if the key had been pressed. */
class CompletionTest {
    @TempDir
    static Path folder;

    private static Path script;

    @BeforeAll
    static void write() throws IOException {
        Run run = Run.of("completion");
        assertThat(run.exit()).isEqualTo(Exit.DONE);
        script = Files.writeString(folder.resolve("completion"), run.out());
    }

    @ParameterizedTest
    @CsvSource({
        "landfall gri,grind",
        "landfall thread M8x1.25 --wor,--working",
        "landfall crib exp,export",
        "landfall crib add --ma,--mark",
        "landfall job pl,plan",
        "landfall people re,reset",
        "landfall hole M8 --units in,inch",
        "landfall help dia,dial"
    })
    void bashCompletes(String typed, String expected) throws Exception {
        assertThat(complete(typed).lines()).contains(expected);
    }

    @Test
    void nothingIsOfferedThatDoesNotBeginSo() throws Exception {
        assertThat(complete("landfall gri").lines()).containsExactly("grind");
    }

    @Test
    void aScriptIsNoJson() {
        Run run = Run.of("completion", "--json");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.out()).contains("does not go with a script for a shell");
    }

    private static String complete(String typed) throws Exception {
        String ask = "source %s; COMP_WORDS=(%s); COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); COMP_LINE='%s'; "
                        .formatted(script, typed, typed)
                + "COMP_POINT=${#COMP_LINE}; _complete_landfall; printf '%s\\n' \"${COMPREPLY[@]}\"";
        Process bash = new ProcessBuilder("bash", "-c", ask).start();
        String out = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(bash.waitFor())
                .as(new String(bash.getErrorStream().readAllBytes(), StandardCharsets.UTF_8))
                .isZero();
        return out;
    }
}
