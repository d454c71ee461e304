// SPDX-License-Identifier: Apache-2.0
package landfall.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is on the main line is finished, and every test runs. */
class UnfinishedTest {
    /** Put together from halves, so that this file does not find itself. */
    private static final Pattern UNFINISHED = Pattern.compile("\\b("
            + String.join(
                    "|",
                    "TO" + "DO",
                    "FIX" + "ME",
                    "XX" + "X",
                    "UnsupportedOperation" + "Exception",
                    "not " + "implemented")
            + ")\\b|@Dis" + "abled");

    @Test
    void nothingIsLeftUnfinishedOrSwitchedOff() {
        List<String> found = new ArrayList<>();
        for (Path file : House.files(".*\\.(java|js|ts|css|jte|sh)|landfall|verify|\\.ci/run")) {
            String text = House.text(file);
            Matcher word = UNFINISHED.matcher(text);
            while (word.find()) {
                found.add(House.place(file, text, word.start()) + " " + word.group());
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void thePlacesAreLookedAt() {
        assertThat(House.files(".*\\.java")).hasSizeGreaterThan(50);
        assertThat(UNFINISHED.matcher("// TO" + "DO later").find()).isTrue();
        assertThat(UNFINISHED.matcher("@Dis" + "abled").find()).isTrue();
    }
}
