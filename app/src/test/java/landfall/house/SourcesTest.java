// SPDX-License-Identifier: Apache-2.0
package landfall.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every figure's origin can be looked up, and the bibliography holds nothing else. */
class SourcesTest {
    private static final Pattern SOURCE =
            Pattern.compile("(?:Source\\s*\\.\\s*of|new\\s+Source)\\s*\\(\\s*(\"([^\"]*)\")?");

    /** The keys of figures that come from no publication. */
    private static final Set<String> NO_PUBLICATION = Set.of("given", "derived", "common-practice", "memory");

    private final Bibliography bibliography = Bibliography.ofTheProject();

    @Test
    void everyKeyInTheCodeIsInTheBibliography() {
        List<String> wrong = new ArrayList<>();
        for (Path file : House.files(".*/src/(main|test)/java/.*\\.java")) {
            if (file.endsWith("working/Source.java") || file.endsWith("house/SourcesTest.java")) {
                continue;
            }
            String text = House.text(file);
            Matcher source = SOURCE.matcher(text);
            while (source.find()) {
                String place = House.place(file, text, source.start());
                if (source.group(1) == null) {
                    wrong.add(place + " names its source by something else than a plain text");
                } else if (!bibliography.keys().contains(source.group(2))) {
                    wrong.add(place + " names " + source.group(2) + ", which is not in sources.bib");
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyEntryIsUsed() {
        StringBuilder everything = new StringBuilder();
        House.files(".*/src/.*\\.(java|csv|json|properties)|docs/methods/.*\\.md")
                .forEach(file -> everything.append(House.text(file)).append('\n'));
        Set<String> unused = new TreeSet<>();
        for (String key : bibliography.keys()) {
            Pattern asAWord = Pattern.compile("(?<![\\w-])" + Pattern.quote(key) + "(?![\\w-])");
            if (!NO_PUBLICATION.contains(key) && !asAWord.matcher(everything).find()) {
                unused.add(key);
            }
        }
        assertThat(unused).isEmpty();
    }

    @Test
    void everyEntrySaysWhatItIsAndWhereFrom() {
        for (Bibliography.Entry entry : bibliography.entries()) {
            assertThat(entry.fields().getOrDefault("title", ""))
                    .as("title of %s", entry.key())
                    .isNotBlank();
            assertThat(entry.namesItsPublisher() || entry.fields().containsKey("note"))
                    .as("%s names a publisher, or says in a note why none is recorded", entry.key())
                    .isTrue();
            entry.fields()
                    .forEach((field, value) ->
                            assertThat(value).as(entry.key() + ", " + field).isNotBlank());
        }
    }

    @Test
    void keysAreUniqueAndNoEntryRunsIntoTheNext() {
        assertThat(bibliography.keys()).doesNotHaveDuplicates();
        assertThat(bibliography.entries())
                .allSatisfy(entry -> assertThat(String.join("\n", entry.fields().values()))
                        .as(entry.key())
                        .doesNotContain("@"));
        assertThat(House.text(House.root().resolve("sources.bib")).lines().filter(line -> line.startsWith("@")))
                .hasSameSizeAs(bibliography.keys());
    }
}
