// SPDX-License-Identifier: Apache-2.0
package landfall.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A table of figures without its origin is worth nothing. */
class DataHeadsTest {
    private final List<String> keys = Bibliography.ofTheProject().keys();

    @Test
    void everyTableThatIsShippedSaysItsSourceAndColumns() {
        assertThat(findings(".*/src/main/.*\\.csv", List.of("source", "columns")))
                .isEmpty();
    }

    @Test
    void everyReferenceTableSaysItsSourceItsToleranceAndColumns() {
        assertThat(findings(".*/src/test/.*/reference/.*\\.csv", List.of("source", "tolerance", "columns")))
                .isEmpty();
    }

    private List<String> findings(String pathPattern, List<String> wanted) {
        List<String> wrong = new ArrayList<>();
        for (Path file : House.files(pathPattern)) {
            List<String> head = House.text(file)
                    .lines()
                    .takeWhile(line -> line.startsWith("#"))
                    .toList();
            for (String word : wanted) {
                Optional<String> line = head.stream()
                        .filter(text -> text.startsWith("# " + word + ":"))
                        .findFirst();
                if (line.map(text -> text.substring(word.length() + 3).isBlank())
                        .orElse(true)) {
                    wrong.add(House.name(file) + " has no '# " + word + ":' at its head");
                }
            }
            head.stream()
                    .filter(line -> line.startsWith("# source:"))
                    .filter(line -> namesNoKey(line.substring(9)))
                    .forEach(line -> wrong.add(House.name(file) + " names no key of sources.bib in '" + line + "'"));
        }
        return wrong;
    }

    private boolean namesNoKey(String line) {
        return Arrays.stream(line.split("[^\\w.-]+")).noneMatch(word -> keys.contains(word.replaceAll("\\.$", "")));
    }
}
