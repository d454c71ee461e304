// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import landfall.cards.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The examples in the help are run, those that need nothing but the files that come with the program. */
class ExamplesTest {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    static List<String> nouns() throws IOException {
        List<String> nouns = new ArrayList<>();
        new ObjectMapper()
                .readTree(Run.of("help", "--json").out())
                .get("commands")
                .forEach(command -> nouns.add(command.get("noun").asText()));
        return nouns;
    }

    static Stream<String> examples() throws IOException {
        return nouns().stream()
                .flatMap(noun -> Words.of("command.examples." + noun)
                        .replaceAll("\\\\\\s*\\n\\s*", "")
                        .lines())
                .filter(line -> line.startsWith("landfall "));
    }

    @Test
    void everyCommandHasExamplesInItsHelp() throws IOException {
        assertThat(nouns())
                .hasSizeGreaterThan(18)
                .allSatisfy(noun -> assertThat(Run.of("help", noun).out())
                        .contains("Examples:\n  ")
                        .contains("landfall " + noun));
    }

    /** Those that read or write a person's own files, start a server or pipe are left to a person. */
    private static boolean canBeRun(String line) {
        return !line.matches(".*[<>|].*|.* (serve|people|crib|job add|job done|job card|job list|job show).*|.*~/.*")
                && !line.matches("(.* )?(tap|fixture|readings|reliefs)\\.(json|csv).*");
    }

    static Stream<String> runnable() throws IOException {
        return examples().filter(ExamplesTest::canBeRun);
    }

    @Test
    void mostExamplesAreRun() throws IOException {
        assertThat(runnable().toList()).hasSizeGreaterThan(24);
    }

    @ParameterizedTest
    @MethodSource("runnable")
    void anExampleAnswers(String line, @TempDir Path folder) throws IOException {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(line.replace("examples/", "../examples/"));
        while (word.find()) {
            words.add(word.group(1) == null ? word.group(2) : word.group(1));
        }
        words.remove(0);
        if (words.get(0).equals("demo")) {
            words.addAll(List.of("--into", folder.toString()));
        } else if (words.get(0).equals("job")) {
            words.addAll(List.of("--store", folder.resolve("crib.db").toString()));
        }
        Run run = Run.of(words.toArray(String[]::new));
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        assertThat(run.out()).isNotBlank();
    }
}
