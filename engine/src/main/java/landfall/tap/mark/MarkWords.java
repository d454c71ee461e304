// SPDX-License-Identifier: Apache-2.0
package landfall.tap.mark;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Words that are stamped on shanks beside thread and limit, longest first. */
final class MarkWords {
    private static final String RESOURCE = "/tap/marking-words.csv";

    /** One word, whatever blanks stand in it. */
    record Known(Pattern pattern, int length, String kind, String means, boolean read) {}

    static final List<Known> ALL = load();

    private MarkWords() {}

    private static List<Known> load() {
        List<Known> all = new ArrayList<>();
        try (InputStream in = MarkWords.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("missing resource " + RESOURCE);
            }
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .forEach(line -> enter(line.split(";", -1), all));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        all.sort(Comparator.comparingInt(Known::length).reversed());
        return List.copyOf(all);
    }

    private static void enter(String[] cells, List<Known> all) {
        for (String word : cells[0].split("\\|", -1)) {
            String regex = "(?<![A-Z0-9.])"
                    + Pattern.quote(word.toUpperCase(Locale.ROOT)).replace(" ", "\\E\\s*\\Q") + "(?![A-Z0-9])";
            all.add(new Known(Pattern.compile(regex), word.length(), cells[1], cells[2], cells[3].equals("read")));
        }
    }
}
