// SPDX-License-Identifier: Apache-2.0
package landfall.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A method note is found from the code that computes by it, and has the parts a reader looks for. */
class MethodNotesTest {
    private static final List<String> PARTS =
            List.of("Question", "Symbols", "Formulas", "Source", "Range", "Worked by hand", "Left out", "How good");

    private static final Pattern NOTE_NAMED = Pattern.compile("docs/methods/([\\w-]+\\.md)");

    @Test
    void everyNoteHasItsParts() {
        List<String> wrong = new ArrayList<>();
        for (Path note : House.files("docs/methods/(?!README).*\\.md")) {
            List<String> headings = House.text(note)
                    .lines()
                    .filter(line -> line.startsWith("## "))
                    .map(line -> line.substring(3).strip())
                    .toList();
            for (String part : PARTS) {
                if (!headings.contains(part)) {
                    wrong.add(House.name(note) + " has no heading '## " + part + "'");
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyNoteIsNamedInTheCode() {
        StringBuilder code = new StringBuilder();
        House.files(".*/src/main/java/.*\\.java").forEach(file -> code.append(House.text(file)));
        List<String> unnamed = House.files("docs/methods/(?!README).*\\.md").stream()
                .map(note -> note.getFileName().toString())
                .filter(note -> code.indexOf(note) < 0)
                .toList();
        assertThat(unnamed).isEmpty();
    }

    @Test
    void everyNoteThatTheCodeNamesIsThere() {
        TreeSet<String> missing = new TreeSet<>();
        for (Path file : House.files(".*/src/main/java/.*\\.java")) {
            Matcher named = NOTE_NAMED.matcher(House.text(file));
            while (named.find()) {
                if (!Files.exists(House.root().resolve(named.group()))) {
                    missing.add(named.group() + ", named in " + House.name(file));
                }
            }
        }
        assertThat(missing).isEmpty();
    }
}
