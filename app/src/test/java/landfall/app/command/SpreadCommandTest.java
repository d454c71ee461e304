// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many set-ups from the command line, on the example shop's cards. */
class SpreadCommandTest {
    @TempDir
    Path folder;

    private static Run grind(String... more) {
        List<String> words = new ArrayList<>(List.of(
                "spread", "grind", "../examples/tap-m8.json", "--fixture", "../examples/fixture-three-lobes.json"));
        words.addAll(List.of(more));
        return Run.of(words.toArray(String[]::new));
    }

    private static Run setting(String... more) {
        List<String> words = new ArrayList<>(List.of(
                "--vary",
                "swivel=normal 0.25 deg",
                "--vary",
                "radial-rise=normal 0.02 mm",
                "--watch",
                "asSet.working=4 deg to 7 deg",
                "--samples",
                "3000",
                "--seed",
                "7"));
        words.addAll(List.of(more));
        return grind(words.toArray(String[]::new));
    }

    @Test
    void threadsAndAFileGiveTheSameAnswer() {
        String file = folder.resolve("kept.json").toString();
        Run one = setting("--json", "--threads", "1", "--keep", file);
        assertThat(one.exit()).isEqualTo(Exit.DONE);
        assertThat(setting("--json", "--threads", "7").out()).isEqualTo(one.out());
        assertThat(Run.of("spread", "run", file, "--json").out()).isEqualTo(one.out());
    }

    @Test
    void theTextSaysHowLikelyAndWhatMovesMost() {
        Run run = setting();
        assertThat(run.out()).contains("within 4 deg to 7 deg: ").contains("moves most with");
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    @Test
    void everySetUpIsALineOfTheFile() throws IOException {
        Path csv = folder.resolve("rows.csv");
        assertThat(setting("--csv", csv.toString()).exit()).isEqualTo(Exit.DONE);
        List<String> lines = Files.readAllLines(csv);
        assertThat(lines).hasSize(3001);
        assertThat(lines.get(0)).isEqualTo("number,swivel_deg,radial-rise_mm,asSet.working_deg");
        double mean = lines.stream()
                .skip(1)
                .mapToDouble(line -> Double.parseDouble(line.split(",")[3]))
                .average()
                .orElseThrow();
        assertThat(mean).isBetween(5.97, 6.03);
    }

    @Test
    void whatIsWrongIsToldAllAtOnce() {
        Run run = grind("--vary", "swivel", "--watch", "asSet.working=7 deg to 4 deg");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err()).contains("--vary");
        Run more = grind("--vary", "swivl=normal 1 deg", "--watch", "asSet.wrking", "--samples", "0");
        assertThat(more.exit()).isEqualTo(Exit.REFUSED);
        assertThat(more.err()).contains("vary.swivl").contains("samples");
        assertThat(Run.of("spread", "grnd").err()).contains("did you mean grind?");
    }

    @Test
    void theResultsThatCanBeWatchedAreListed() {
        assertThat(Run.of("spread", "hole", "M8x1.25-6H", "--results").out().lines())
                .contains("minor.max", "drill.share");
    }
}
